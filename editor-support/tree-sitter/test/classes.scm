; What each leaf is to the compiler (dev.treen.syntax.Token.Kind): the test holds these against its own tokens.

["project" "use" "board" "sheet" "part" "joint" "accept" "measured" "holds" "pattern" "param" "repeat"] @WORD
["like" "to" "into" "as" "on" "because" "one" "of" "in" "overall"] @WORD
(sizes "x" @WORD)
["and" "or" "not" "let" "require" "when" "then" "else"] @RESERVED
(truth) @RESERVED
[(name) (reference) (type) (option) (code)] @NAME
[(number) (fraction)] @NUMBER
(unit) @UNIT
(text) @TEXT
["," ";" ":" "==" "!=" "<=" ">=" "<" ">" "=" "+" "-" "*" "/" ".." "."] @MARK
["{" "}" "(" ")" "[" "]"] @BRACKET
(doc_comment) @DOC_COMMENT
(comment) @COMMENT

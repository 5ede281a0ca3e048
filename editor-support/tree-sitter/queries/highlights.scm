; No two patterns take the same node: editors differ in whether the first or the last one counts.

(comment) @comment
(doc_comment) @comment.documentation

; What a statement begins with, and the words within it.
["project" "board" "sheet" "part" "joint" "pattern" "param" "let"] @keyword
"use" @keyword.import
["repeat" "in" "when" "then" "else"] @keyword.conditional
["require" "accept" "measured" "holds" "because" "like" "to" "into" "as" "on" "one" "of" "overall"] @keyword
["and" "or" "not"] @keyword.operator
(tail word: (name) @keyword)

; What is declared.
(board name: (name) @type.definition)
(part name: (name) @type.definition)
(pattern name: (name) @type.definition)
(joint kind: (name) @type.builtin)
(joint alias: (name) @type.definition)
(use alias: (name) @module)
(let name: (name) @constant)
(repeat name: (name) @variable.parameter)
(param name: (name) @variable.parameter)
(field name: (name) @variable.parameter)
(type) @type.builtin
(option) @constant
(code) @constant

; A line of a name and more uses a pattern where declarations stand, and sets a property elsewhere.
(file (property name: (name) @type))
(pattern (block (property name: (name) @type)))
(repeat (block (property name: (name) @type)))
(when (block (property name: (name) @type)))
(project (block (property name: (name) @property)))
(board (block (property name: (name) @property)))
(part (block (property name: (name) @property)))
(joint (block (property name: (name) @property)))
(holds (block (property name: (name) @property)))
(param (block (property name: (name) @property)))
(field (block (property name: (name) @property)))
(property (block (property name: (name) @property)))

; Values.
(number) @number
(fraction) @number
(unit) @keyword.type
(slope ":" @operator)
(text) @string
(escape) @string.escape
(truth) @boolean
((reference) @constant.builtin (#eq? @constant.builtin "auto"))
((reference) @variable (#not-eq? @variable "auto"))
(member name: (name) @property)
(call function: (name) @function)

(sizes "x" @operator)
["+" "-" "*" "/" "<" "<=" ">" ">=" "==" "!=" "=" ".."] @operator
["(" ")" "[" "]" "{" "}"] @punctuation.bracket
["," ";" "."] @punctuation.delimiter
(param ":" @punctuation.delimiter)
(field ":" @punctuation.delimiter)

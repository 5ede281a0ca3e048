// A stand-in until the real lexer lands: it lets the module build.
lexer grammar TreenLexer;

WORD : [a-z_]+ ;
REST : . ;

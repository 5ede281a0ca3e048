// The words and marks of Treen. What a word means is the parser's affair: only the last group of words is reserved.
//
// Units are not lexed here: `in` and `m` are names anywhere but after a figure, so the driver turns the word after a
// figure into a UNIT. HOLE stands for a name or value that is missing; only the driver makes one.
lexer grammar TreenLexer;

tokens { UNIT, HOLE }

// Statement words: a line that begins with one is that statement.
PROJECT  : 'project' ;
USE      : 'use' ;
BOARD    : 'board' ;
SHEET    : 'sheet' ;
PART     : 'part' ;
JOINT    : 'joint' ;
ACCEPT   : 'accept' ;
MEASURED : 'measured' ;
HOLDS    : 'holds' ;
PATTERN  : 'pattern' ;
PARAM    : 'param' ;
REPEAT   : 'repeat' ;

// Words inside a statement.
LIKE     : 'like' ;
TO       : 'to' ;
INTO     : 'into' ;
AS       : 'as' ;
ON       : 'on' ;
BECAUSE  : 'because' ;
ONE      : 'one' ;
OF       : 'of' ;
IN       : 'in' ;
OVERALL  : 'overall' ;
X        : 'x' ;

// Words that expressions need, reserved everywhere.
AND      : 'and' ;
OR       : 'or' ;
NOT      : 'not' ;
TRUE     : 'true' ;
FALSE    : 'false' ;
LET      : 'let' ;
REQUIRE  : 'require' ;
WHEN     : 'when' ;
THEN     : 'then' ;
ELSE     : 'else' ;

// Hidden characters inside a name belong to it, so that they are reported once and the name still reads as meant.
NAME     : NAME_START NAME_PART* ;
FRACTION : DIGIT+ '/' DIGIT+ ;
NUMBER   : DIGIT+ ('.' DIGIT+)? | '.' DIGIT+ ;

TEXT      : '"' TEXT_PART* '"' ;
OPEN_TEXT : '"' TEXT_PART* '\\'? ;

DOC_COMMENT  : '///' ~[\r\n]* -> channel(HIDDEN) ;
COMMENT      : ('//' ~[\r\n]* | '/*' .*? '*/') -> channel(HIDDEN) ;
OPEN_COMMENT : '/*' (~[*\r\n] | '*'+ ~[*/\r\n])* '*'* -> channel(HIDDEN) ;

LBRACE   : '{' ;
RBRACE   : '}' ;
LPAREN   : '(' ;
RPAREN   : ')' ;
LBRACK   : '[' ;
RBRACK   : ']' ;
COMMA    : ',' ;
SEMI     : ';' ;
COLON    : ':' ;
EQUAL    : '==' ;
UNEQUAL  : '!=' ;
AT_MOST  : '<=' ;
AT_LEAST : '>=' ;
BELOW    : '<' ;
ABOVE    : '>' ;
ASSIGN   : '=' ;
PLUS     : '+' ;
MINUS    : '-' ;
TIMES    : '*' ;
OVER     : '/' ;
DOTS     : '..' ;
DOT      : '.' ;
PERCENT  : '%' ;

NEW_LINE : '\r'? '\n' | '\r' ;
BLANKS   : [ \t\f\u00A0\uFEFF]+ -> skip ;

// Anything else: reported by the driver, never a failure of the lexer.
STRAY    : . ;

fragment DIGIT      : [0-9] ;
fragment NAME_START : [\p{L}_] ;
fragment NAME_PART  : [\p{L}\p{M}\p{Nd}_] | HIDDEN_MARK ;
fragment HIDDEN_MARK
    : [\u0001-\u0008\u000E-\u001F\u007F-\u0084\u0086-\u009F\u00AD\u061C\u200B-\u200F\u202A-\u202E\u2060-\u2069]
    ;
fragment TEXT_PART  : ~["\\\r\n] | '\\' ~[\r\n] ;

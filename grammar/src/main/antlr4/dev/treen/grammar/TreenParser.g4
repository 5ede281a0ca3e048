// The grammar of Treen: `file` is the whole language.
//
// The compiler does not call `file`. It finds the braces itself, so that a broken line cannot spoil its neighbours, and
// gives every head to `line`. A test holds the two readings against each other.
parser grammar TreenParser;

options { tokenVocab = TreenLexer; }

file : statements EOF ;

line : head EOF ;

// A statement ends at a new line, a semicolon or its closing brace.
statements : sep* (statement sep* | head sep+)* head? ;

statement : head NEW_LINE* block (NEW_LINE* ELSE NEW_LINE* block)? ;

block : LBRACE statements RBRACE ;

sep : NEW_LINE | SEMI ;

head
    : PROJECT text?                                                # projectHead
    | USE text (AS name)?                                          # useHead
    | LET name ASSIGN expr                                         # letHead
    | (BOARD | SHEET) name                                         # boardHead
    | PART name (LBRACK expr RBRACK)? (LIKE path)?                 # partHead
    | JOINT kind = name (pair (COMMA others)*)? (AS alias = name)? # jointHead
    | REQUIRE expr (BECAUSE text)?                                 # requireHead
    | ACCEPT code (ON path (COMMA path)*)? (BECAUSE text)?         # acceptHead
    | MEASURED path expr                                           # measuredHead
    | HOLDS path                                                   # holdsHead
    | PATTERN name                                                 # patternHead
    | (PARAM name | property) COLON type (ASSIGN expr)?            # paramHead
    | REPEAT name IN expr                                          # repeatHead
    | WHEN expr                                                    # whenHead
    | property (value (COMMA value)*)?                             # propertyHead
    ;

pair : path (TO | INTO) path ;

// After the first pair, a lone part is joined to the same left part in the same way.
others : path ((TO | INTO) path)? ;

// The code of a finding: panel-tight.
code : codeWord (MINUS codeWord)* ;

codeWord : name | NUMBER | AND | OR | NOT | TRUE | FALSE | LET | REQUIRE | WHEN | THEN | ELSE ;

type : ONE OF name (COMMA name)* | name ;

// 178 overall; 3/8 from front
value : expr tail* ;

tail : OVERALL | tailWord expr? ;

path
    : name                       # startPath
    | path DOT name              # memberPath
    | path LBRACK expr RBRACK    # elementPath
    ;

// From tight to loose.
expr
    : figure                                                                          # figureExpr
    | NUMBER COLON NUMBER                                                             # slopeExpr
    | text                                                                            # textExpr
    | (TRUE | FALSE)                                                                  # truthExpr
    | name LPAREN (expr (COMMA expr)*)? RPAREN                                        # callExpr
    | name                                                                            # wordExpr
    | LPAREN expr RPAREN                                                              # groupExpr
    | expr DOT name                                                                   # memberExpr
    | expr LBRACK expr RBRACK                                                         # elementExpr
    | MINUS expr                                                                      # minusExpr
    | expr op = (TIMES | OVER) expr                                                   # infixExpr
    | expr op = (PLUS | MINUS) expr                                                   # infixExpr
    | expr X expr                                                                     # sizesExpr
    | expr DOTS expr                                                                  # betweenExpr
    | expr op = (BELOW | AT_MOST | ABOVE | AT_LEAST | EQUAL | UNEQUAL) expr             # infixExpr
    | NOT expr                                                                        # notExpr
    | expr op = AND expr                                                              # infixExpr
    | expr op = OR expr                                                               # infixExpr
    | WHEN expr THEN expr ELSE expr                                                   # choiceExpr
    ;

// 9; 9mm; 3/4in; 2 3/8in; 5ft 3 1/2in
figure : amount (UNIT (amount UNIT)*)? ;

amount : NUMBER FRACTION? | FRACTION ;

text : TEXT | OPEN_TEXT ;

name : tailWord | OVERALL | X | PROJECT | USE | BOARD | SHEET | PART | JOINT | ACCEPT | MEASURED | HOLDS | PATTERN | PARAM
    | REPEAT | HOLE ;

// A property may not be called as a statement is: its line would read as that statement.
property : NAME | LIKE | TO | INTO | AS | ON | BECAUSE | ONE | OF | IN | OVERALL | X ;

tailWord : NAME | LIKE | TO | INTO | AS | ON | BECAUSE | ONE | OF | IN ;

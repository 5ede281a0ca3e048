// A stand-in until the real parser lands: it lets the module build.
parser grammar TreenParser;

options { tokenVocab = TreenLexer; }

file : (WORD | REST)* EOF ;

// What the neighbours of a token tell: where a statement ends, which word is a unit, whether 3/4 is one figure, and
// that the x of 900x140 stands between two figures. The rules are those of the compiler's TokenReader and BlockReader.
#include "tree_sitter/parser.h"

#include <string.h>

enum TokenType { END, FRACTION, UNIT, GLUED_X, RECOVERING };

#define LONGEST_UNIT 5

static const char *const UNITS[] = {"mm", "cm", "m",  "in",  "ft", "deg", "degC", "degF", "%",
                                    "g",  "kg", "lb", "oz", "min", "h",  "day", "d"};

static bool is_blank(int32_t c) { return c == ' ' || c == '\t' || c == '\f' || c == 0xA0 || c == 0xFEFF; }

static bool is_line_end(int32_t c) { return c == '\n' || c == '\r'; }

static bool is_digit(int32_t c) { return c >= '0' && c <= '9'; }

static bool is_letter(int32_t c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }

// Every letter beyond ASCII counts as part of a word here: none of them begins a mark.
static bool is_word(int32_t c) { return is_letter(c) || is_digit(c) || (c > 0xBF && c != 0xD7 && c != 0xF7 && c != 0xFEFF
                                        && !(c >= 0x2018 && c <= 0x2033)); }

static bool is_unit(const char *word) {
    for (unsigned i = 0; i < sizeof UNITS / sizeof *UNITS; i++) {
        if (strcmp(word, UNITS[i]) == 0) {
            return true;
        }
    }
    return false;
}

// The lexer stands at the first of two strokes, or of a stroke and a star. Says whether lines end within the comment,
// and leaves the lexer behind it.
static bool pass_comment(TSLexer *lexer, bool *over_lines) {
    lexer->advance(lexer, false);
    if (lexer->lookahead == '/') {
        while (!lexer->eof(lexer) && !is_line_end(lexer->lookahead)) {
            lexer->advance(lexer, false);
        }
        return true;
    }
    if (lexer->lookahead != '*') {
        return false;
    }
    lexer->advance(lexer, false);
    bool star = false;
    while (!lexer->eof(lexer) && !(star && lexer->lookahead == '/')) {
        *over_lines |= is_line_end(lexer->lookahead);
        star = lexer->lookahead == '*';
        lexer->advance(lexer, false);
    }
    lexer->advance(lexer, false);
    return true;
}

// A statement ends at the end of its line, unless its block begins on a line below; and before a closing brace.
static bool scan_end(TSLexer *lexer) {
    lexer->result_symbol = END;
    lexer->mark_end(lexer);
    if (lexer->eof(lexer) || lexer->lookahead == '}') {
        return true;
    }
    if (lexer->lookahead == '/') {
        bool over_lines = false;
        return pass_comment(lexer, &over_lines) && over_lines;
    }
    if (!is_line_end(lexer->lookahead)) {
        return false;
    }
    for (;;) {
        while (is_blank(lexer->lookahead) || is_line_end(lexer->lookahead)) {
            lexer->advance(lexer, false);
        }
        bool over_lines = false;
        if (lexer->lookahead != '/' || !pass_comment(lexer, &over_lines)) {
            return lexer->lookahead != '{';
        }
    }
}

// 3/4, but not the 3/4 of 3/4.5.
static bool scan_fraction(TSLexer *lexer) {
    while (is_digit(lexer->lookahead)) {
        lexer->advance(lexer, false);
    }
    if (lexer->lookahead != '/') {
        return false;
    }
    lexer->advance(lexer, false);
    if (!is_digit(lexer->lookahead)) {
        return false;
    }
    while (is_digit(lexer->lookahead)) {
        lexer->advance(lexer, false);
    }
    lexer->mark_end(lexer);
    if (lexer->lookahead == '.') {
        lexer->advance(lexer, false);
        if (is_digit(lexer->lookahead)) {
            return false;
        }
    }
    lexer->result_symbol = FRACTION;
    return true;
}

// Whether a word apart from the figure before it can be its unit: not where it begins a longer name.
static bool may_end_figure(TSLexer *lexer) {
    while (lexer->lookahead == ' ' || lexer->lookahead == '\t') {
        lexer->advance(lexer, false);
    }
    if (lexer->lookahead == '.') {
        lexer->advance(lexer, false);
        return lexer->lookahead == '.';
    }
    return lexer->lookahead != '(' && lexer->lookahead != '[';
}

static bool accept_unit(TSLexer *lexer) {
    lexer->result_symbol = UNIT;
    return true;
}

// A word right behind a figure is its unit, known or not, up to the x of a size; so is a mark for inches or degrees.
static bool scan_glued(TSLexer *lexer, const bool *valid) {
    int32_t c = lexer->lookahead;
    if (c == 'x' && valid[GLUED_X]) {
        lexer->advance(lexer, false);
        lexer->mark_end(lexer);
        if (is_digit(lexer->lookahead)) {
            lexer->result_symbol = GLUED_X;
            return true;
        }
        if (!valid[UNIT] || !is_word(lexer->lookahead)) {
            return false;
        }
    } else if (!valid[UNIT]) {
        return false;
    } else if (c == 0xB0 || c == 0xBA) {
        lexer->advance(lexer, false);
        if (lexer->lookahead == 'C' || lexer->lookahead == 'F' || lexer->lookahead == 'c' || lexer->lookahead == 'f') {
            lexer->advance(lexer, false);
        }
        lexer->mark_end(lexer);
        return accept_unit(lexer);
    } else if (c == '%' || c == '"' || c == '\'' || c == 0x2032 || c == 0x2033 || c == 0x201D || c == 0x2019 ||
               c == '#') {
        lexer->advance(lexer, false);
        lexer->mark_end(lexer);
        return accept_unit(lexer);
    } else if (!is_word(c)) {
        return false;
    }
    char word[LONGEST_UNIT + 1] = "";
    unsigned length = c == 'x' ? LONGEST_UNIT : 0;
    while (is_word(lexer->lookahead)) {
        if (lexer->lookahead == 'x' && length > 0 && is_unit(word)) {
            lexer->mark_end(lexer);
            lexer->advance(lexer, false);
            if (is_digit(lexer->lookahead)) {
                return accept_unit(lexer);
            }
            length = LONGEST_UNIT;
            continue;
        }
        if (length < LONGEST_UNIT) {
            word[length++] = lexer->lookahead < 0x80 ? (char)lexer->lookahead : '?';
            word[length] = '\0';
        }
        lexer->advance(lexer, false);
    }
    lexer->mark_end(lexer);
    return accept_unit(lexer);
}

static bool scan_unit_apart(TSLexer *lexer) {
    char word[LONGEST_UNIT + 1] = "";
    unsigned length = 0;
    if (lexer->lookahead == '%') {
        lexer->advance(lexer, false);
        lexer->mark_end(lexer);
        return may_end_figure(lexer) && accept_unit(lexer);
    }
    while (is_word(lexer->lookahead)) {
        if (length == LONGEST_UNIT || lexer->lookahead >= 0x80) {
            return false;
        }
        word[length++] = (char)lexer->lookahead;
        word[length] = '\0';
        lexer->advance(lexer, false);
    }
    lexer->mark_end(lexer);
    return is_unit(word) && may_end_figure(lexer) && accept_unit(lexer);
}

bool tree_sitter_treen_external_scanner_scan(void *payload, TSLexer *lexer, const bool *valid) {
    (void)payload;
    if (valid[RECOVERING]) {
        return false;
    }
    if ((valid[UNIT] || valid[GLUED_X]) && (is_word(lexer->lookahead) || strchr("%\"'#", (int)lexer->lookahead) ||
                                            lexer->lookahead > 0x7F)) {
        if (!is_blank(lexer->lookahead) && !is_digit(lexer->lookahead) && !lexer->eof(lexer)) {
            return scan_glued(lexer, valid);
        }
    }
    while (is_blank(lexer->lookahead)) {
        lexer->advance(lexer, true);
    }
    if (valid[FRACTION] && is_digit(lexer->lookahead)) {
        return scan_fraction(lexer);
    }
    if (valid[UNIT] && (is_letter(lexer->lookahead) || lexer->lookahead == '%')) {
        return scan_unit_apart(lexer);
    }
    return valid[END] && scan_end(lexer);
}

void *tree_sitter_treen_external_scanner_create(void) { return NULL; }

void tree_sitter_treen_external_scanner_destroy(void *payload) { (void)payload; }

unsigned tree_sitter_treen_external_scanner_serialize(void *payload, char *buffer) {
    (void)payload;
    (void)buffer;
    return 0;
}

void tree_sitter_treen_external_scanner_deserialize(void *payload, const char *buffer, unsigned length) {
    (void)payload;
    (void)buffer;
    (void)length;
}

// Treen for tree-sitter. The grammar of record is grammar/src; a test holds this one against the compiler's tokens.
//
// What only its neighbours can tell is settled in src/scanner.c, as the compiler settles it: where a statement ends,
// which word is a unit, and that 900x140 is a size. Names and words of the language share their spelling; only the
// state that the parser is in says which is meant.

const LEVEL = {
  choice: 1,
  or: 2,
  and: 3,
  not: 4,
  comparison: 5,
  between: 6,
  sizes: 7,
  sum: 8,
  product: 9,
  minus: 10,
  member: 11,
};

const NAME = /[\p{L}_][\p{L}\p{M}\p{Nd}_\u00AD\u061C\u200B-\u200F\u202A-\u202E\u2060-\u2069]*/;

const commaSeparated = (rule) => seq(rule, repeat(seq(',', rule)));

module.exports = grammar({
  name: 'treen',

  word: ($) => $.name,

  // The order is that of the tokens in src/scanner.c. The last is in no rule: it is only asked for while recovering.
  externals: ($) => [$._end, $.fraction, $.unit, $._glued_x, $._recovering],

  extras: ($) => [/[ \t\f\r\n\u00A0\uFEFF]/, $.doc_comment, $.comment],

  supertypes: ($) => [$._statement, $._expression],

  rules: {
    file: ($) => repeat(choice($._statement, ';')),

    _statement: ($) =>
      choice(
        $.project,
        $.use,
        $.let,
        $.board,
        $.part,
        $.joint,
        $.require,
        $.accept,
        $.measured,
        $.holds,
        $.pattern,
        $.param,
        $.field,
        $.repeat,
        $.when,
        $.property,
      ),

    block: ($) => seq('{', repeat(choice($._statement, ';')), '}'),

    _stop: ($) => choice(';', $._end),

    _body: ($) => choice(field('body', $.block), $._stop),

    project: ($) => seq('project', optional(field('title', $.text)), $._body),

    use: ($) => seq('use', field('file', $.text), optional(seq('as', field('alias', $.name))), $._stop),

    let: ($) => seq('let', field('name', $.name), '=', field('value', $._expression), $._stop),

    board: ($) => seq(choice('board', 'sheet'), field('name', $.name), $._body),

    part: ($) =>
      seq(
        'part',
        field('name', $.name),
        optional(seq('[', field('index', $._expression), ']')),
        optional(seq('like', field('like', $._path))),
        $._body,
      ),

    joint: ($) =>
      seq(
        'joint',
        field('kind', $.name),
        optional(seq($.pair, repeat(seq(',', choice($.pair, $._path))))),
        optional(seq('as', field('alias', $.name))),
        $._body,
      ),

    pair: ($) => seq(field('left', $._path), choice('to', 'into'), field('right', $._path)),

    require: ($) => seq('require', field('condition', $._expression), optional($._because), $._stop),

    accept: ($) => seq('accept', field('code', $.code), optional(seq('on', commaSeparated($._path))), optional($._because), $._stop),

    _because: ($) => seq('because', field('reason', $.text)),

    measured: ($) => seq('measured', field('what', $._path), field('value', $._expression), $._stop),

    holds: ($) => seq('holds', field('what', $._path), $._body),

    pattern: ($) => seq('pattern', field('name', $.name), $._body),

    param: ($) => seq('param', field('name', $.name), $._typed),

    // An option of a parameter, in the block behind it.
    field: ($) => seq(field('name', $.name), $._typed),

    _typed: ($) => seq(':', field('type', $._type), optional(seq('=', field('default', $._expression))), $._body),

    _type: ($) => choice(alias($.name, $.type), $.one_of),

    one_of: ($) => seq('one', 'of', commaSeparated(alias($.name, $.option))),

    repeat: ($) => seq('repeat', field('name', $.name), 'in', field('range', $._expression), $._body),

    when: ($) =>
      seq(
        'when',
        field('condition', $._expression),
        choice(seq(field('body', $.block), optional(seq('else', field('otherwise', $.block)))), $._stop),
      ),

    property: ($) => seq(field('name', $.name), optional(commaSeparated(field('value', $.value))), $._body),

    // 178 overall; 3/8 from front
    value: ($) => seq($._expression, repeat($.tail)),

    tail: ($) => choice('overall', prec.right(seq(field('word', $.name), optional($._expression)))),

    _path: ($) => choice($._reference, alias($.member_path, $.member), alias($.element_path, $.element)),

    member_path: ($) => seq(field('of', $._path), '.', field('name', $.name)),

    element_path: ($) => seq(field('of', $._path), '[', field('index', $._expression), ']'),

    _expression: ($) =>
      choice(
        $.figure,
        $.slope,
        $._operand,
        $.product,
        $.sum,
        $.sizes,
        $.between,
        $.comparison,
        $.logical,
      ),

    // All that a division may take on its right, but for figures.
    _operand: ($) => choice($._place, $.minus, $.not, $.choice),

    // What may have members and elements.
    _place: ($) => choice($.text, $.truth, $.call, $._reference, $.group, $.member, $.element),

    // 9; 9mm; 3/4in; 2 3/8in; 5ft 3 1/2in
    figure: ($) => prec.right(seq($._amount, optional(seq($.unit, repeat(seq($._amount, $.unit)))))),

    _amount: ($) => prec.right(choice(seq($.number, optional($.fraction)), $.fraction)),

    // Behind a stroke that divides, 3/4 is no figure: a/3/4 divides twice.
    _divisor: ($) =>
      prec.right(seq($.number, optional($.fraction), optional(seq($.unit, repeat(seq($._amount, $.unit)))))),

    slope: ($) => prec(1, seq($.number, ':', $.number)),

    number: () => token(choice(/[0-9]+(\.[0-9]+)?/, /\.[0-9]+/)),

    text: ($) => seq('"', repeat(choice(token.immediate(prec(1, /[^"\\\r\n]+/)), $.escape)), token.immediate('"')),

    escape: () => token.immediate(/\\[^\r\n]/),

    truth: () => choice('true', 'false'),

    call: ($) => seq(field('function', $.name), '(', optional(commaSeparated($._expression)), ')'),

    group: ($) => seq('(', $._expression, ')'),

    member: ($) => prec(LEVEL.member, seq(field('of', $._place), '.', field('name', $.name))),

    element: ($) => prec(LEVEL.member, seq(field('of', $._place), '[', field('index', $._expression), ']')),

    minus: ($) => prec(LEVEL.minus, seq('-', $._expression)),

    product: ($) =>
      prec.left(
        LEVEL.product,
        choice(
          seq($._expression, '*', $._expression),
          seq($._expression, '/', choice($._operand, alias($._divisor, $.figure))),
        ),
      ),

    sum: ($) => prec.left(LEVEL.sum, seq($._expression, choice('+', '-'), $._expression)),

    sizes: ($) => prec.left(LEVEL.sizes, seq($._expression, choice('x', alias($._glued_x, 'x')), $._expression)),

    between: ($) => prec.left(LEVEL.between, seq($._expression, '..', $._expression)),

    comparison: ($) =>
      prec.left(LEVEL.comparison, seq($._expression, choice('<', '<=', '>', '>=', '==', '!='), $._expression)),

    not: ($) => prec(LEVEL.not, seq('not', $._expression)),

    logical: ($) =>
      choice(
        prec.left(LEVEL.and, seq($._expression, 'and', $._expression)),
        prec.left(LEVEL.or, seq($._expression, 'or', $._expression)),
      ),

    choice: ($) =>
      prec.right(
        LEVEL.choice,
        seq(
          'when',
          field('condition', $._expression),
          'then',
          field('then', $._expression),
          'else',
          field('else', $._expression),
        ),
      ),

    // The code of a finding: panel-tight.
    code: () => token(/[\p{L}\p{Nd}_]+(-[\p{L}\p{Nd}_]+)*/),

    // A name that was given elsewhere.
    _reference: ($) => alias($.name, $.reference),

    name: () => NAME,

    doc_comment: () => token(prec(1, /\/\/\/[^\r\n]*/)),

    comment: () => token(choice(/\/\/[^\r\n]*/, /\/\*[^*]*\*+([^/*][^*]*\*+)*\//)),
  },
});

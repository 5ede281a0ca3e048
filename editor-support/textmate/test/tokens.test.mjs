// Each word of every Treen file of the project is to this grammar what it is to the compiler.
import { test } from 'node:test';
import assert from 'node:assert/strict';
import { differences, sources } from '../../compiler-tokens.mjs';
import { loadGrammar, offsetsOf } from './colours.mjs';

const grammar = await loadGrammar();

const CLASSES = [
  [/^comment\.line\.documentation/, 'DOC_COMMENT'],
  [/^comment/, 'COMMENT'],
  [/^string/, 'TEXT'],
  [/^constant\.numeric/, 'NUMBER'],
  [/^(keyword\.other|invalid\.illegal)\.unit/, 'UNIT'],
  [/^punctuation\.section/, 'BRACKET'],
  [/^punctuation|^keyword\.operator\.(range|comparison|assignment|arithmetic|slope)/, 'MARK'],
  [/^keyword\.operator\.logical|^constant\.language\.boolean/, 'RESERVED'],
  [/^(storage\.type|keyword)/, 'WORD'],
  [/^(variable|entity|support|constant)/, 'NAME'],
];

/** The class that the scopes of a token stand for; the outer ones decide for what is within comments and text. */
function classOf(scopes) {
  const outer = scopes.find((scope) => /^(comment|string)/.test(scope)) ?? scopes.at(-1);
  return CLASSES.find(([pattern]) => pattern.test(outer))?.[1];
}

// Which words are reserved shows in no scope, and a code is one colour here; a word behind a value has the colour of
// a word of the language, whether the grammar knows it or not.
const RESERVED = /^(let|require|when|then|else)$/;

for (const source of sources) {
  test(`agrees on ${source.name}`, () => {
    const classes = new Array(source.text.length).fill(undefined);
    const codes = new Set();
    for (const { start, end, scopes } of offsetsOf(grammar, source.text)) {
      classes.fill(classOf(scopes), start, end);
      if (scopes.some((scope) => scope.startsWith('constant.other.finding'))) {
        for (let i = start; i < end; i++) codes.add(i);
      }
    }
    const wordAt = (i) => /[\p{L}_]*$/u.exec(source.text.slice(0, i))[0] + /^[\p{L}_]*/u.exec(source.text.slice(i))[0];
    const alike = (ours, theirs, i) =>
      (theirs === 'NAME' && codes.has(i)) ||
      (theirs === 'WORD' && ours === 'RESERVED' && RESERVED.test(wordAt(i))) ||
      (theirs === 'WORD' && ours === 'NAME' && wordAt(i) === 'from');
    assert.deepEqual(differences(source, classes, alike), []);
  });
}

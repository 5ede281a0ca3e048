// Every Treen file of the project reads without an error, and each of its words is to this grammar what it is to the
// compiler.
import { test } from 'node:test';
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { differences, root, sources } from '../../compiler-tokens.mjs';

const here = process.env.TREE_SITTER_FOLDER ?? fileURLToPath(new URL('..', import.meta.url));

function treeSitter(...words) {
  const run = spawnSync('tree-sitter', words, { cwd: here, encoding: 'utf8', maxBuffer: 1 << 28 });
  if (run.error) throw run.error;
  return run;
}

test('there is something to read', () => {
  assert.ok(sources.filter(({ name }) => name.startsWith('examples/')).length >= 2, `${sources.length} files`);
});

/** Offsets in UTF-16 units from rows and columns in bytes. */
function offsets(text) {
  let start = 0;
  const lines = text.split('\n').map((line) => {
    const at = start;
    start += line.length + 1;
    return { line, at };
  });
  return (row, column) => lines[row].at + Buffer.from(lines[row].line).subarray(0, column).toString().length;
}

for (const source of sources) {
  test(`reads ${source.name}`, () => {
    const file = join(root, source.name);
    const parsed = treeSitter('parse', '-q', file);
    assert.equal(parsed.status, 0, parsed.stdout);
    const offset = offsets(source.text);
    const classes = new Array(source.text.length).fill(undefined);
    const codes = new Set();
    const captures = treeSitter('query', '--captures', 'test/classes.scm', file);
    assert.equal(captures.status, 0, captures.stderr);
    for (const [, kind, ...place] of captures.stdout.matchAll(
      /capture: \d+ - (\w+), start: \((\d+), (\d+)\), end: \((\d+), (\d+)\)/g,
    )) {
      const [row, column, endRow, endColumn] = place.map(Number);
      classes.fill(kind, offset(row, column), offset(endRow, endColumn));
    }
    for (const [, row, column, endRow, endColumn] of treeSitter('query', '--captures', 'test/codes.scm', file).stdout
      .matchAll(/start: \((\d+), (\d+)\), end: \((\d+), (\d+)\)/g)) {
      for (let i = offset(+row, +column); i < offset(+endRow, +endColumn); i++) codes.add(i);
    }
    // The code of a finding is one token here, and several words and strokes to the compiler.
    assert.deepEqual(differences(source, classes, (_, theirs, i) => theirs === 'NAME' && codes.has(i)), []);
  });
}

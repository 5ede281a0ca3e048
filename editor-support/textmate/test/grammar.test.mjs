// The grammar, token by token. Each file in tokens/ holds lines of Treen (`> `), and under each its tokens
// with their innermost scope. TREEN_REWRITE=1 writes the files anew: read the difference before committing it.
import { test } from 'node:test';
import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadGrammar, colour, innermost } from './colours.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = join(here, '../../..');
const grammar = await loadGrammar();

function render(text) {
  const { lines } = colour(grammar, text);
  return text
    .split('\n')
    .map((line, i) =>
      [`> ${line}`.trimEnd(), ...lines[i].map((token) => `    ${innermost(token).padEnd(36)} ${token.text}`)].join('\n'),
    )
    .join('\n')
    .concat('\n');
}

for (const name of readdirSync(join(here, 'tokens'))) {
  test(`tokens: ${name.replace('.txt', '').replaceAll('-', ' ')}`, () => {
    const file = join(here, 'tokens', name);
    const expected = readFileSync(file, 'utf8');
    const source = expected
      .split('\n')
      .filter((line) => line.startsWith('>'))
      .map((line) => line.slice(2))
      .join('\n');
    const actual = render(source);
    if (process.env.TREEN_REWRITE) writeFileSync(file, actual);
    else assert.equal(actual, expected);
  });
}

function treenFiles(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.endsWith('.treen'))
    .map((name) => join(folder, name));
}

const projects = ['examples', 'library', 'compiler/src/main/resources', 'compiler/src/test/resources/dev/treen/syntax/samples']
  .map((folder) => join(root, folder))
  .flatMap(treenFiles);

for (const file of projects) {
  test(`every word has a colour: ${file.slice(root.length)}`, () => {
    const { lines, depth } = colour(grammar, readFileSync(file, 'utf8'));
    const plain = lines.flatMap((tokens, i) =>
      tokens
        .filter((token) => innermost(token) === 'text' || token.scopes.some((scope) => scope.startsWith('invalid.')))
        .map((token) => `line ${i + 1}: ${token.text}`),
    );
    assert.deepEqual(plain, []);
    assert.equal(depth, 1, 'every block that opens must close by the end of the file');
  });
}

test('a very long line stays cheap', () => {
  const start = process.hrtime.bigint();
  colour(grammar, 'part a { length ' + '('.repeat(2000) + ' '.repeat(20000) + 'x'.repeat(20000));
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  assert.ok(seconds < 20, `${seconds.toFixed(1)} s`);
});

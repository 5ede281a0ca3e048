// The compiler's own tokens of every Treen file of the project, as a test of the compiler wrote them.
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
const exported = join(root, 'compiler/target/tokens');
if (!existsSync(exported)) {
  throw new Error('the tokens are missing: run ./mvnw verify, or the compiler\'s TokenExportTest, first');
}

const files = readdirSync(exported, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.treen.tokens'))
  .map((name) => name.replace(/\.tokens$/, '').replaceAll('\\', '/'))
  .filter((name) => existsSync(join(root, name)))
  .sort();

/** Each file with its text and the class of each of its characters; blanks between tokens have none. */
export const sources = files.map((name) => {
  if (statSync(join(root, name)).mtimeMs > statSync(join(exported, `${name}.tokens`)).mtimeMs) {
    throw new Error(`${name} is newer than its tokens: run ./mvnw verify, or the compiler's TokenExportTest, first`);
  }
  const text = readFileSync(join(root, name), 'utf8');
  const classes = new Array(text.length).fill(undefined);
  const tokens = readFileSync(join(exported, `${name}.tokens`), 'utf8').trim().split('\n').filter(Boolean);
  for (const line of tokens) {
    const [kind, start, end] = line.split(' ');
    if (kind !== 'NEW_LINE') classes.fill(kind, Number(start), Number(end));
  }
  return { name, text, classes };
});

/** Where two readings of a text differ, a line of report for each run of characters; blanks are left out. */
export function differences(source, theirs, alike = () => false) {
  const found = [];
  let last = -2;
  for (let i = 0; i < source.text.length; i++) {
    if (/\s/.test(source.text[i]) || source.classes[i] === theirs[i]) continue;
    if (alike(source.classes[i], theirs[i], i)) continue;
    if (i !== last + 1) {
      const before = source.text.slice(0, i);
      const line = before.split('\n').length;
      found.push(`${source.name}:${line}:${i - before.lastIndexOf('\n')} compiler ${source.classes[i]}, here ${theirs[i]}: ` +
        JSON.stringify(source.text.slice(i, i + 20)));
    }
    last = i;
  }
  return found;
}

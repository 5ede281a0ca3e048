// Puts together what the package holds: the bundled client, the grammar and the licences.
import { build } from 'esbuild';
import { copyFileSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('.', import.meta.url)));
mkdirSync('syntaxes', { recursive: true });
copyFileSync('../textmate/treen.tmLanguage.json', 'syntaxes/treen.tmLanguage.json');
copyFileSync('../../LICENSE', 'LICENSE');
const { metafile } = await build({
  entryPoints: ['src/extension.js'],
  outfile: 'dist/extension.js',
  bundle: true,
  platform: 'node',
  format: 'cjs',
  target: 'node18',
  external: ['vscode'],
  minify: true,
  legalComments: 'none',
  logLevel: 'warning',
  metafile: true,
});

// What others wrote is passed on with its licence, as each licence asks.
const packages = Object.keys(metafile.inputs)
  .map((file) => file.match(/^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0])
  .filter(Boolean);
const licences = [...new Set(packages)].sort().map((folder) => {
  const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  if (!file) throw new Error(`${folder} has no licence file`);
  return `${name} ${version} (${license})\n\n${readFileSync(`${folder}/${file}`, 'utf8').trim()}\n`;
});
writeFileSync('dist/third-party-licences.txt', licences.join('\n' + '-'.repeat(72) + '\n\n'));

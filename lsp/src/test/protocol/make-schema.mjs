// Writes the JSON Schema of every message of the Language Server Protocol, from the protocol's published type
// declarations: npm packages vscode-languageserver-protocol and -types, MIT. Run with Node where these and
// ts-json-schema-generator are installed,
// beside a tsconfig.json with "moduleResolution": "bundler":
//
//   node make-schema.mjs > ../resources/dev/treen/lsp/protocol.schema.json
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createGenerator } from 'ts-json-schema-generator';

const common = join('node_modules', 'vscode-languageserver-protocol', 'lib', 'common');

const lines = [];
for (const name of readdirSync(common).filter(each => each.endsWith('.d.ts'))) {
  const text = readFileSync(join(common, name), 'utf8');
  for (const found of text.matchAll(/const method: ['`]([^'`]+)['`];[^}]*?const type: (\w+)<([\s\S]*?)>;/g)) {
    const [, method, kind, args] = found;
    const parts = split(args);
    const notification = kind.includes('Notification');
    const bare = kind.endsWith('0');
    const params = bare ? 'undefined' : parts[0];
    const result = notification ? 'undefined' : parts[bare ? 0 : 1];
    lines.push(`  ${JSON.stringify(method)}: { params: ${params}; result: ${result === 'void' ? 'null' : result} };`);
  }
}

/** The arguments of a type, parted at the commas that stand in no brackets. */
function split(args) {
  const parts = [''];
  let depth = 0;
  for (const c of args) {
    depth += '<({['.includes(c) ? 1 : '>)}]'.includes(c) ? -1 : 0;
    if (c === ',' && depth === 0) {
      parts.push('');
    } else {
      parts[parts.length - 1] += c;
    }
  }
  return parts.map(each => each.trim());
}

lines.push('  "$/progress": { params: { token: ProgressToken; value: WorkDoneProgressBegin | WorkDoneProgressReport'
  + ' | WorkDoneProgressEnd }; result: undefined };');
lines.push('  "$/cancelRequest": { params: { id: number | string }; result: undefined };');

const names = [...new Set(lines.join('\n').match(/\b[A-Z]\w+/g))]
  .filter(each => !['Record', 'Array', 'Partial', 'URI'].includes(each));
const entry = join(process.cwd(), 'messages.ts');
writeFileSync(entry, `import { ${names.join(', ')} } from 'vscode-languageserver-protocol';\n`
  + `export interface Messages {\n${[...new Set(lines)].sort().join('\n')}\n}\n`);
const schema = createGenerator({
  path: entry, tsconfig: 'tsconfig.json', type: 'Messages', skipTypeCheck: true, additionalProperties: true, jsDoc: 'none',
  topRef: true, expose: 'all', encodeRefs: true,
}).createSchema('Messages');
console.log(JSON.stringify(schema));

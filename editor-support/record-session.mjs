// Stands between an editor and the server and writes what they say to each other, a message a line:
//   node record-session.mjs RECORD PROJECT-FOLDER LAUNCHER lsp
// The folder is written as file:///project, what the server writes for a session as file:///session, and the number of the
// editor's process as null, so that the record knows nothing of the machine. The project's files stand first, and again when they change on the disk. Questions that
// come again and again and are told nothing new are left out. The test SessionReplayTest in lsp plays such records again.
import { spawn } from 'node:child_process';
import { existsSync, openSync, readFileSync, readdirSync, realpathSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [record, folder, launcher, ...words] = process.argv.slice(2);
const out = openSync(record, 'w');
const child = spawn(launcher, words, { stdio: ['pipe', 'pipe', 'inherit'] });
const real = realpathSync(folder);

const session = new RegExp(`${pathToFileURL(tmpdir()).href}/treen-\\d+`, 'g');
const keep = (line) => writeSync(out, `${JSON.stringify(line)}\n`);

/** What stands in a file of the project now, or null. */
function keepFile(file) {
  keep({ from: 'disk', file, text: existsSync(join(real, file)) ? readFileSync(join(real, file), 'utf8') : null });
}
readdirSync(real).filter((name) => name.endsWith('.treen')).sort().forEach(keepFile);

/** Questions about all files that have no answer yet, by their number. */
const polls = new Map();

function write(from, body) {
  const told = body.toString('utf8').replaceAll(pathToFileURL(real).href, 'file:///project').replaceAll(real, '/project')
    .replaceAll(session, 'file:///session');
  const message = JSON.parse(told);
  if (message.method === 'initialize') message.params.processId = null;
  if (message.method === 'workspace/didChangeWatchedFiles') {
    const within = message.params.changes.map(({ uri }) => decodeURIComponent(uri)).filter((uri) => uri.startsWith('file:///project/'));
    within.forEach((uri) => keepFile(uri.slice('file:///project/'.length)));
  }
  if (from === 'editor' && message.method === 'workspace/diagnostic') {
    polls.set(message.id, { from, message });
    return;
  }
  if (from === 'server' && !message.method && polls.has(message.id)) {
    const asked = polls.get(message.id);
    polls.delete(message.id);
    if (message.result?.items?.every((each) => each.kind === 'unchanged')) return;
    keep(asked);
  }
  keep({ from, message });
}

/** Cuts a stream into messages by their lengths. */
function listen(from) {
  let held = Buffer.alloc(0);
  return (bytes) => {
    held = Buffer.concat([held, bytes]);
    for (;;) {
      const head = held.indexOf('\r\n\r\n');
      if (head < 0) return;
      const start = head + 4;
      const length = Number(/content-length: *(\d+)/i.exec(held.subarray(0, head).toString())[1]);
      if (held.length < start + length) return;
      write(from, held.subarray(start, start + length));
      held = held.subarray(start + length);
    }
  };
}

const editor = listen('editor');
const server = listen('server');
process.stdin.on('data', (bytes) => {
  editor(bytes);
  child.stdin.write(bytes);
});
process.stdin.on('end', () => child.stdin.end());
child.stdout.on('data', (bytes) => {
  server(bytes);
  process.stdout.write(bytes);
});
child.on('exit', (code) => process.exit(code ?? 1));

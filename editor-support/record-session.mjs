// Stands between an editor and the server and writes what they say to each other, a message a line:
//   node record-session.mjs RECORD PROJECT-FOLDER LAUNCHER lsp
// The folder is written as file:///project, and the number of the editor's process as null, so that the record knows
// nothing of the machine. The test SessionReplayTest in lsp plays such records again.
import { spawn } from 'node:child_process';
import { openSync, realpathSync, writeSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const [record, folder, launcher, ...words] = process.argv.slice(2);
const out = openSync(record, 'w');
const child = spawn(launcher, words, { stdio: ['pipe', 'pipe', 'inherit'] });
const real = realpathSync(folder);

function write(from, body) {
  const told = body.toString('utf8').replaceAll(pathToFileURL(real).href, 'file:///project').replaceAll(real, '/project');
  const message = JSON.parse(told);
  if (message.method === 'initialize') message.params.processId = null;
  writeSync(out, `${JSON.stringify({ from, message })}\n`);
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

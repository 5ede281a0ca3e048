'use strict';

const { test } = require('node:test');
const assert = require('node:assert/strict');
const fs = require('node:fs');
const os = require('node:os');
const path = require('node:path');
const { chooseLauncher } = require('../src/launcher');

/** A folder that holds an executable `treen`. */
function folderWithTreen(t) {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'treen-launcher-'));
  t.after(() => fs.rmSync(folder, { recursive: true }));
  fs.writeFileSync(path.join(folder, 'treen'), '#!/bin/sh\n', { mode: 0o755 });
  return folder;
}

const nowhere = { setting: '', folders: [], trusted: true, path: '', platform: 'linux' };

test('the setting comes first', (t) => {
  const [own, set] = [folderWithTreen(t), folderWithTreen(t)];
  const chosen = chooseLauncher({ ...nowhere, setting: path.join(set, 'treen'), folders: [own], path: own });
  assert.deepEqual(chosen, { file: path.join(set, 'treen') });
});

test('a setting may begin at the home folder or at the open folder', (t) => {
  const folder = folderWithTreen(t);
  const expected = { file: path.join(folder, 'treen') };
  assert.deepEqual(chooseLauncher({ ...nowhere, setting: '~/treen', home: folder }), expected);
  assert.deepEqual(chooseLauncher({ ...nowhere, setting: 'treen', folders: [folder] }), expected);
});

test('a setting that names nothing is reported, not passed over', (t) => {
  const chosen = chooseLauncher({ ...nowhere, setting: '/no/such/treen', path: folderWithTreen(t) });
  assert.match(chosen.missing, /\/no\/such\/treen/);
});

test("the open folder's own launcher comes before the PATH", (t) => {
  const [own, onPath] = [folderWithTreen(t), folderWithTreen(t)];
  assert.deepEqual(chooseLauncher({ ...nowhere, folders: [own], path: onPath }), { file: path.join(own, 'treen') });
});

test('a folder that is not trusted does not choose what is run', (t) => {
  const [own, onPath] = [folderWithTreen(t), folderWithTreen(t)];
  const chosen = chooseLauncher({ ...nowhere, trusted: false, folders: [own], path: onPath });
  assert.deepEqual(chosen, { file: path.join(onPath, 'treen') });
  assert.match(chooseLauncher({ ...nowhere, trusted: false, folders: [own] }).missing, /not trusted/);
});

test('a folder or a file that cannot be run is no launcher', (t) => {
  const folder = folderWithTreen(t);
  fs.chmodSync(path.join(folder, 'treen'), 0o644);
  assert.ok('missing' in chooseLauncher({ ...nowhere, folders: [folder] }));
  fs.rmSync(path.join(folder, 'treen'));
  fs.mkdirSync(path.join(folder, 'treen'));
  assert.ok('missing' in chooseLauncher({ ...nowhere, folders: [folder] }));
  assert.ok('missing' in chooseLauncher({ ...nowhere, setting: path.join(folder, 'treen') }));
});

test('a relative folder on the PATH is passed over', () => {
  assert.ok('missing' in chooseLauncher({ ...nowhere, path: '.' + path.delimiter + 'bin' }));
});

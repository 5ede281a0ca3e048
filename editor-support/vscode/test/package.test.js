'use strict';

const { test } = require('node:test');
const assert = require('node:assert/strict');
const fs = require('node:fs');
const path = require('node:path');
const { execFileSync } = require('node:child_process');

const folder = path.join(__dirname, '..');
const manifest = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));

test('the package holds what the manifest points at, and no more', () => {
  const listed = execFileSync(path.join(folder, 'node_modules/.bin/vsce'), ['ls', '--no-dependencies'], { cwd: folder });
  assert.deepEqual(listed.toString().trim().split('\n').sort(), [
    'LICENSE',
    'README.md',
    'dist/extension.js',
    'dist/third-party-licences.txt',
    'language-configuration.json',
    'package.json',
    'screen.png',
    'syntaxes/treen.tmLanguage.json',
  ]);
  assert.ok(fs.statSync(path.join(folder, 'treen.vsix')).size > 10_000);
});

test('every command that is offered is registered', () => {
  const source = fs.readFileSync(path.join(folder, 'src/extension.js'), 'utf8');
  for (const { command } of manifest.contributes.commands) assert.ok(source.includes(`'${command}'`), command);
});

test('the patterns of the language configuration are valid, and do what they should', () => {
  const configuration = JSON.parse(fs.readFileSync(path.join(folder, 'language-configuration.json'), 'utf8'));
  const increase = new RegExp(configuration.indentationRules.increaseIndentPattern);
  for (const line of ['part lid {', 'board plank {   // from the rack', 'let a = (', '  base floating {']) {
    assert.match(line, increase);
  }
  for (const line of ['part lid { length 3 }', '// a note {', 'units mm', 'let a = "{']) assert.doesNotMatch(line, increase);
  const decrease = new RegExp(configuration.indentationRules.decreaseIndentPattern);
  assert.match('  }', decrease);
  assert.doesNotMatch('length 3 }', decrease);
  const { pattern, flags } = configuration.wordPattern;
  assert.deepEqual('inside.length 3/4in panel_2'.match(new RegExp(pattern, flags + 'g')), [
    'inside', 'length', '3', '4', 'in', 'panel_2',
  ]);
});

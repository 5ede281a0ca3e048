'use strict';

const { test } = require('node:test');
const assert = require('node:assert/strict');
const { isPage, pageOf } = require('../src/page');

test('pages and drawings are shown in a panel, and nothing else', () => {
  assert.ok(isPage('/bench/tea-caddy-plan/plan.html'));
  assert.ok(isPage('/bench/layout-plank.svg'));
  assert.ok(!isPage('/bench/panel-tight.md'));
});

test('a page keeps its text and is told to fetch and run nothing', () => {
  const page = pageOf('/bench/plan.html', '<!DOCTYPE html>\n<html lang="en">\n<head><title>Tea caddy</title></head><body>Lid</body></html>');
  assert.match(page, /^<!DOCTYPE html>\n<html lang="en">\n<head><meta http-equiv="Content-Security-Policy" content="default-src 'none'/);
  assert.match(page, /<title>Tea caddy<\/title><\/head><body>Lid<\/body>/);
});

test('a drawing stands on a page of its own', () => {
  const page = pageOf('/bench/layout.svg', '<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg"><title>plank</title></svg>\n');
  assert.match(page, /Content-Security-Policy/);
  assert.match(page, /<body><svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"><title>plank<\/title><\/svg>/);
  assert.ok(!page.includes('<?xml'));
});

// A window of VS Code's own code in a headless Chromium, handled as a user handles it: by the keyboard, by the mouse, and by
// looking. Waits are for what is to be seen, each with a limit.
import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';

const limit = 90_000; // milliseconds; the first answers include the start of the language server, on a busy machine

/** What a test needs to be the same everywhere; all else is as it comes. */
const settings = {
  'security.workspace.trust.enabled': false,
  'files.autoSave': 'off',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'editor.minimap.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'extensions.autoCheckUpdates': false,
  'update.mode': 'none',
};

/** Starts VS Code's server with the extension in it; ends with `stop()`. */
export async function serve(code, data, extension) {
  mkdirSync(`${data}/data/User`, { recursive: true });
  writeFileSync(`${data}/data/User/settings.json`, JSON.stringify(settings));
  const where = ['--server-data-dir', data, '--extensions-dir', `${data}/extensions`];
  const main = `${code}/out/server-main.js`;
  const installed = await said(spawn(process.execPath, [main, ...where, '--install-extension', extension]));
  if (!/successfully installed/.test(installed)) throw new Error(`the extension cannot be installed:\n${installed}`);
  const server = spawn(process.execPath, [
    main, ...where, '--host', '127.0.0.1', '--port', '0', '--without-connection-token', '--accept-server-license-terms',
    '--telemetry-level', 'off', '--force-disable-user-env',
  ]);
  const address = await said(server, /Web UI available at (\S+)/);
  return { address, stop: () => server.kill() };
}

/** What a program says until it ends, or what it says in the group of a pattern. */
function said(child, pattern) {
  return new Promise((resolve, reject) => {
    let all = '';
    const hear = (bytes) => {
      all += bytes;
      const found = pattern?.exec(all);
      if (found) resolve(found[1]);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', reject);
    child.on('exit', () => (pattern ? reject(new Error(all)) : resolve(all)));
  });
}

export class Window {
  /** Opens a folder in a window of its own. */
  static async open(program, address, folder) {
    const browser = await chromium.launch({ executablePath: program, args: ['--no-sandbox', '--disable-gpu'] });
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    page.setDefaultTimeout(limit);
    await page.goto(`${address.replace('localhost', '127.0.0.1')}?folder=${encodeURIComponent(folder)}`);
    return new Window(browser, page);
  }

  constructor(browser, page) {
    this.browser = browser;
    this.page = page;
    this.keys = page.keyboard;
  }

  /** Waits until `look` gives what `ok` takes, and gives what it saw last. */
  async until(look, ok = Boolean, patience = limit) {
    const end = Date.now() + patience;
    for (;;) {
      const seen = await look();
      if (ok(seen) || Date.now() > end) return seen;
      await this.page.waitForTimeout(100);
    }
  }

  /** The texts of what a selector finds, with plain blanks. */
  async texts(selector) {
    const all = await this.page.locator(selector).allInnerTexts();
    return all.map((text) => text.replaceAll('\u00a0', ' '));
  }

  /** The lines of the editor that are on the screen, with the hints in them. */
  lines() {
    return this.page.evaluate(() =>
      [...document.querySelectorAll('.editor-group-container.active .view-line')]
        .map((line) => [parseInt(line.style.top, 10), line.textContent.replaceAll('\u00a0', ' ')])
        .sort((one, other) => one[0] - other[0])
        .map(([, text]) => text),
    );
  }

  async openFile(name) {
    const row = this.page.locator('.explorer-folders-view .monaco-list-row', { hasText: name });
    await row.dblclick();
    await this.page.locator('.editor-group-container.active .tab.active', { hasText: name }).waitFor();
    await this.page.locator('.editor-group-container.active .view-line').first().waitFor();
  }

  /** A command of the palette, by its title. */
  async command(title) {
    await this.keys.press('F1');
    await this.page.locator('.quick-input-widget input').first().waitFor();
    await this.keys.type(title);
    await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: title }).waitFor();
    await this.keys.press('Enter');
  }

  /** Puts the cursor before the character `at` of a text that is what the editor shows. */
  async goTo(text, at) {
    const before = text.slice(0, at).split('\n');
    await this.keys.press('Control+g');
    const input = this.page.locator('.quick-input-widget input').first();
    await input.waitFor();
    await this.keys.type(`${before.length}:${before.at(-1).length + 1}`);
    await this.keys.press('Enter');
    await input.waitFor({ state: 'hidden' });
  }

  async save() {
    await this.keys.press('Control+s');
    await this.page.locator('.editor-group-container.active .tab.active:not(.dirty)').waitFor();
  }

  /** The list of problems: each with its message, without the other places that it names. */
  problems() {
    return this.texts('.markers-panel .monaco-list-row:has(.marker-icon)');
  }

  /** Takes what is called so from the menu of fixes and refactorings. */
  async choose(title) {
    const row = this.page.locator('.action-widget .monaco-list-row.action.focused');
    for (let i = 0; i < 20 && !(await row.innerText()).includes(title); i++) await this.keys.press('ArrowDown');
    await this.keys.press('Enter');
  }

  /** The bodies of the panels that show pages. */
  async pages() {
    const bodies = [];
    for (const frame of this.page.frames()) {
      if (frame === this.page.mainFrame()) continue;
      const text = await frame.evaluate(() => document.body?.innerText ?? '').catch(() => '');
      if (text.trim()) bodies.push(text);
    }
    return bodies;
  }

  screen(file) {
    return this.page.screenshot({ path: file });
  }

  /** Closes the window as a user does, so that it can say goodbye. */
  async close() {
    const closed = this.page.waitForEvent('close');
    await this.page.close({ runBeforeUnload: true });
    await closed;
  }

  async stop() {
    await this.browser.close();
  }
}

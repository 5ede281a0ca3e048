// Shows what the server has made, the plan of a project or the layout of a board, beside the text that it was made of.
'use strict';

const vscode = require('vscode');
const { pageOf } = require('./page');

/** One panel a file; it follows the file, and shows the new plan when it is built again. */
class Panels {
  constructor() {
    /** @type {Map<string, vscode.WebviewPanel>} */
    this.open = new Map();
  }

  /** @param {vscode.Uri} file a page or a drawing */
  async show(file) {
    const key = file.toString();
    const before = this.open.get(key);
    if (before) {
      before.webview.html = await read(file);
      before.reveal(undefined, true);
      return;
    }
    const panel = vscode.window.createWebviewPanel(
      'treen.plan',
      file.path.slice(file.path.lastIndexOf('/') + 1),
      { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
      // What a project says is shown and never run; nothing else is fetched.
      { enableScripts: false, localResourceRoots: [], enableFindWidget: true },
    );
    this.open.set(key, panel);
    const folder = vscode.Uri.joinPath(file, '..');
    const watcher = vscode.workspace.createFileSystemWatcher(
      new vscode.RelativePattern(folder, file.path.slice(folder.path.length + 1)),
    );
    const anew = () => read(file).then((html) => (panel.webview.html = html), () => {});
    watcher.onDidChange(anew);
    watcher.onDidCreate(anew);
    panel.onDidDispose(() => {
      watcher.dispose();
      this.open.delete(key);
    });
    panel.webview.html = await read(file);
  }

  dispose() {
    for (const panel of [...this.open.values()]) panel.dispose();
  }
}

async function read(file) {
  const text = Buffer.from(await vscode.workspace.fs.readFile(file)).toString('utf8');
  return pageOf(file.path, text);
}

module.exports = { Panels };

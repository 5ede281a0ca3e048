// Connects VS Code with `treen lsp`. Everything Treen knows comes from the server; this only starts and stops it.
'use strict';

const vscode = require('vscode');
const { LanguageClient, State } = require('vscode-languageclient/node');
const { chooseLauncher } = require('./launcher');

/** @type {LanguageClient | undefined} */
let client;
/** @type {import('vscode').OutputChannel} */
let log;
/** Starting and stopping follow one another, however fast they are asked for. */
let turn = Promise.resolve();

/** Called by VS Code when a Treen file or a folder with one is opened. */
async function activate(context) {
  log = vscode.window.createOutputChannel('Treen');
  context.subscriptions.push(
    log,
    vscode.commands.registerCommand('treen.restartServer', restart),
    vscode.commands.registerCommand('treen.showLog', () => log.show()),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration('treen.launcher')) restart();
    }),
    vscode.workspace.onDidGrantWorkspaceTrust(restart),
  );
  await restart();
}

/** Called by VS Code before it closes. */
function deactivate() {
  return inTurn(stop);
}

function restart() {
  return inTurn(async () => {
    await stop();
    await start();
  });
}

/** One failed start must not keep the next from being tried. */
function inTurn(action) {
  turn = turn.then(action, action).catch((problem) => log.appendLine(String(problem?.stack ?? problem)));
  return turn;
}

async function stop() {
  const running = client;
  client = undefined;
  if (running && running.state !== State.Stopped) {
    await running.stop(3000).catch(() => {});
  }
  await running?.dispose().catch(() => {});
}

async function start() {
  const chosen = chooseLauncher({
    setting: vscode.workspace.getConfiguration('treen').get('launcher', ''),
    folders: (vscode.workspace.workspaceFolders ?? []).filter((f) => f.uri.scheme === 'file').map((f) => f.uri.fsPath),
    trusted: vscode.workspace.isTrusted,
  });
  if ('missing' in chosen) {
    log.appendLine(`Not started: ${chosen.missing}.`);
    const settings = 'Open the setting';
    // Not awaited: the question may stay open for ever.
    vscode.window
      .showWarningMessage(`Treen's language server was not started: ${chosen.missing}.`, settings)
      .then((answer) => answer && vscode.commands.executeCommand('workbench.action.openSettings', 'treen.launcher'));
    return;
  }
  log.appendLine(`Starting ${chosen.file} lsp`);
  const windowsScript = process.platform === 'win32' && !chosen.file.endsWith('.exe');
  client = new LanguageClient(
    'treen',
    'Treen',
    {
      command: windowsScript ? `"${chosen.file}"` : chosen.file,
      args: ['lsp'],
      options: { shell: windowsScript },
    },
    {
      documentSelector: [
        { language: 'treen', scheme: 'file' },
        { language: 'treen', scheme: 'untitled' },
      ],
      synchronize: { fileEvents: vscode.workspace.createFileSystemWatcher('**/*.treen') },
      outputChannel: log,
    },
  );
  await client.start();
}

module.exports = { activate, deactivate };

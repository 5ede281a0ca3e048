// Connects VS Code with `treen lsp`. Everything Treen knows comes from the server; this only starts and stops it.
'use strict';

const vscode = require('vscode');
const { LanguageClient, State } = require('vscode-languageclient/node');
const { chooseLauncher } = require('./launcher');
const { isPage } = require('./page');
const { Panels } = require('./panels');

/** @type {LanguageClient | undefined} */
let client;
/** @type {import('vscode').OutputChannel} */
let log;
/** @type {Panels} */
let panels;
/** Starting and stopping follow one another, however fast they are asked for. */
let turn = Promise.resolve();

/** Called by VS Code when a Treen file or a folder with one is opened. */
async function activate(context) {
  log = vscode.window.createOutputChannel('Treen');
  panels = new Panels();
  context.subscriptions.push(
    log,
    panels,
    vscode.commands.registerCommand('treen.buildPlan', buildPlan),
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
      middleware: { executeCommand, window: { showDocument } },
      synchronize: { fileEvents: vscode.workspace.createFileSystemWatcher('**/*.treen') },
      outputChannel: log,
    },
  );
  await client.start();
}

/** The command of the palette and of the title: builds the plan of the file that is looked at. */
async function buildPlan() {
  const document = vscode.window.activeTextEditor?.document;
  if (document?.languageId !== 'treen' || document.uri.scheme !== 'file') {
    vscode.window.showWarningMessage('Open the project first: the plan is made of a .treen file, and lies beside it.');
  } else if (!client || client.state !== State.Running) {
    vscode.window.showWarningMessage("Treen's language server is not running; Treen: Show the Log says why.");
  } else {
    await vscode.commands.executeCommand('treen.build', client.code2ProtocolConverter.asUri(document.uri));
  }
}

/** A plan is made of what is on the disk, so the text is saved first; and it takes a moment, which is shown. */
async function executeCommand(command, args, next) {
  if (command !== 'treen.build') return next(command, args);
  const document = vscode.workspace.textDocuments.find((each) => each.uri.toString() === vscode.Uri.parse(args[0]).toString());
  if (document?.isDirty && !(await document.save())) return undefined;
  return vscode.window.withProgress(
    { location: vscode.ProgressLocation.Window, title: 'Treen builds the plan' },
    () => next(command, args),
  );
}

/** Pages stand in a panel beside the text: a browser may be on another machine than the file. */
async function showDocument(params, next) {
  const uri = vscode.Uri.parse(params.uri);
  if (uri.scheme !== 'file' || !params.external || !isPage(uri.path)) return next(params);
  try {
    await panels.show(uri);
    return { success: true };
  } catch (problem) {
    log.appendLine(`Cannot show ${uri.fsPath}: ${problem?.message ?? problem}`);
    return { success: false };
  }
}

module.exports = { activate, deactivate };

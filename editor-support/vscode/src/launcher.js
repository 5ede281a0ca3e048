// Which program to start as the language server. Nothing here needs the editor, so that it can be tested without one.
'use strict';

const fs = require('node:fs');
const path = require('node:path');
const os = require('node:os');

/**
 * Chooses the launcher: the one set by the user; else the one of a folder that is open, because a project that
 * carries its own Treen wants that version; else the one on the PATH. A folder that the user has not marked as
 * trusted must not choose what is run.
 *
 * @param {{ setting: string, folders: string[], trusted: boolean, platform?: string, path?: string, home?: string }} where
 * @returns {{ file: string } | { missing: string }} the launcher, or what was looked for in vain
 */
function chooseLauncher(where) {
  const platform = where.platform ?? process.platform;
  const names = platform === 'win32' ? ['treen.cmd', 'treen.exe', 'treen.bat'] : ['treen'];

  const setting = where.setting.trim();
  if (setting !== '') {
    const file = resolveSetting(setting, where);
    return file && isFile(file) ? { file } : { missing: `the setting treen.launcher names ${setting}, which is not a file` };
  }
  if (where.trusted) {
    for (const file of where.folders.flatMap((folder) => names.map((name) => path.join(folder, name)))) {
      if (isRunnable(file, platform)) return { file };
    }
  }
  const searched = (where.path ?? process.env.PATH ?? '').split(path.delimiter).filter((folder) => path.isAbsolute(folder));
  for (const file of searched.flatMap((folder) => names.map((name) => path.join(folder, name)))) {
    if (isRunnable(file, platform)) return { file };
  }
  return {
    missing: where.trusted
      ? 'there is no treen in the open folder nor on the PATH'
      : 'there is no treen on the PATH, and the open folder is not trusted to bring its own',
  };
}

/** `~` is the home folder, and a relative path is one from the first open folder. */
function resolveSetting(setting, where) {
  if (setting === '~' || setting.startsWith('~/')) return path.join(where.home ?? os.homedir(), setting.slice(1));
  if (path.isAbsolute(setting)) return setting;
  return where.folders.length > 0 ? path.join(where.folders[0], setting) : undefined;
}

function isFile(file) {
  return fs.statSync(file, { throwIfNoEntry: false })?.isFile() ?? false;
}

function isRunnable(file, platform) {
  if (!isFile(file)) return false;
  if (platform === 'win32') return true;
  try {
    fs.accessSync(file, fs.constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

module.exports = { chooseLauncher };

// Makes a page for a panel of a file that the server has written. Nothing here needs the editor, so that it can be tested
// without one.
'use strict';

/** Only what stands in the file itself: nothing is fetched, nothing is run. */
const policy =
  '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\'; img-src data:">';

/** Plans and drawings are made for white paper, whatever colours the editor has. */
const paper = '<style>html { background: #fff; color: #000 }</style>';

/** Whether a file of this name can be shown in a panel. */
function isPage(path) {
  return /\.(html|svg)$/i.test(path);
}

/**
 * @param {string} path the name of the file
 * @param {string} text what stands in it
 * @returns {string} the page: a page as it is, a drawing on a page of its own
 */
function pageOf(path, text) {
  if (/\.svg$/i.test(path)) {
    const drawing = text.replace(/^\s*<\?xml[^>]*\?>\s*(?:<!DOCTYPE[^>]*>\s*)?/, '');
    return `<!DOCTYPE html><html lang="en"><head>${policy}${paper}</head><body>${drawing}</body></html>`;
  }
  const head = /<head[^>]*>/i.exec(text);
  if (!head) return `<!DOCTYPE html><html lang="en"><head>${policy}${paper}</head><body>${text}</body></html>`;
  const end = head.index + head[0].length;
  return text.slice(0, end) + policy + paper + text.slice(end);
}

module.exports = { isPage, pageOf };

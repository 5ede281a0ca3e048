// Reads the grammar with the engine that editors use for it, and tells the scope of every token.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import vsctm from 'vscode-textmate';
import oniguruma from 'vscode-oniguruma';

const require = createRequire(import.meta.url);
const grammarFile = new URL('../treen.tmLanguage.json', import.meta.url);

/** Loads the grammar. */
export async function loadGrammar() {
  await oniguruma.loadWASM(readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm')).buffer);
  const registry = new vsctm.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async (scope) =>
      scope === 'source.treen' ? vsctm.parseRawGrammar(readFileSync(grammarFile, 'utf8'), 'treen.tmLanguage.json') : null,
  });
  return registry.loadGrammar('source.treen');
}

/** The tokens of a text, line by line, blanks left out, each with its scopes from the outside in; and the depth at the end. */
export function colour(grammar, text) {
  let stack = vsctm.INITIAL;
  const lines = text.split(/\r?\n/).map((line) => {
    const result = grammar.tokenizeLine(line, stack);
    stack = result.ruleStack;
    return result.tokens
      .map((token) => ({ text: line.slice(token.startIndex, token.endIndex), scopes: token.scopes }))
      .filter((token) => token.text.trim() !== '')
      .map((token) => ({ text: token.text.trim(), scopes: token.scopes }));
  });
  return { lines, depth: stack.depth };
}

/** The innermost scope without the language's name; `text` where only the surrounding statement is known. */
export function innermost(token) {
  const scope = token.scopes.at(-1);
  return scope === 'source.treen' || scope.startsWith('meta.') ? 'text' : scope.replace(/\.treen$/, '');
}

/** The tokens of a text with their places in it, in UTF-16 units. */
export function offsetsOf(grammar, text) {
  let stack = vsctm.INITIAL;
  let at = 0;
  return text.split('\n').flatMap((line) => {
    const result = grammar.tokenizeLine(line, stack);
    stack = result.ruleStack;
    const start = at;
    at += line.length + 1;
    return result.tokens.map((token) => ({
      start: start + token.startIndex,
      end: start + Math.min(token.endIndex, line.length),
      scopes: token.scopes,
    }));
  });
}

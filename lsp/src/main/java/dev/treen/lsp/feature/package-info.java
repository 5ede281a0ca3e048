/** One class a feature of the editor; each reads one analysis and knows nothing of the others. */
@NullMarked
package dev.treen.lsp.feature;

import org.jspecify.annotations.NullMarked;

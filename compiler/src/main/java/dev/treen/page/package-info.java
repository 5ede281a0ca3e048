/**
 * The plan as it is handed to a reader, one class a section: a page for the screen, the same on paper, and what is
 * printed or bought from it. A page holds the project's own files, so that it can be read back and built again.
 */
@NullMarked
package dev.treen.page;

import org.jspecify.annotations.NullMarked;

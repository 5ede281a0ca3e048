/**
 * The text of a project written another way: it means the same, which is looked at before anything is handed out.
 */
@NullMarked
package dev.treen.rewrite;

import org.jspecify.annotations.NullMarked;

/**
 * Drawings of parts and assemblies: what stands on a sheet, where, and in which pen; then the sheet as a file.
 */
@NullMarked
package dev.treen.drawing;

import org.jspecify.annotations.NullMarked;

/**
 * The project for other programs: the assembly in three dimensions as glTF 2.0, the views of parts as DXF. Both are
 * written plainly here: glTF is a page of JSON and a row of numbers, for which the JSON library that is there anyway does,
 * and R12 DXF is pairs of lines; a library for either would be larger than what it saves.
 */
@NullMarked
package dev.treen.export;

import org.jspecify.annotations.NullMarked;

/**
 * The plan on paper: the page of the plan laid out on sheets of A4 or Letter as one PDF, with its letters in it. Only this
 * package sees the library that does so, and nothing but a build that writes a PDF loads it.
 */
@NullMarked
package dev.treen.paper;

import org.jspecify.annotations.NullMarked;

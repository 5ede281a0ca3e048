/** The search itself: plain arrays inside, nothing of it in the API. The notes are in the README of the package above. */
@NullMarked
package dev.treen.yield.engine;

import org.jspecify.annotations.NullMarked;

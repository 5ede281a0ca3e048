/** The search itself: plain arrays inside, nothing of it in the API. Why it is a search of our own, and what
 * each class is for, stands in DEVELOPERS.md. */
@NullMarked
package dev.treen.yield.engine;

import org.jspecify.annotations.NullMarked;

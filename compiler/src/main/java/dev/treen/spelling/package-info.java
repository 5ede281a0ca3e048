/** How far two words lie apart; for whoever offers the word that somebody may have meant. */
@NullMarked
package dev.treen.spelling;

import org.jspecify.annotations.NullMarked;

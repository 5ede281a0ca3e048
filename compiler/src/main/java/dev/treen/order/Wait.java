package dev.treen.order;

/**
 * A time in which nothing may be done to the parts.
 *
 * @param leastHours at least
 * @param mostHours at most
 * @param words what for, and what shortens or ends it
 * @param what waits, in short, as {@code the glue}
 * @param source of the figures
 */
public record Wait(int leastHours, int mostHours, String words, String what, String source) {}

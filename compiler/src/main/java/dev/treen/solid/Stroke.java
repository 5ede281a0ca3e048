package dev.treen.solid;

/**
 * A straight line of a drawing.
 *
 * @param from one end, in the view's flat coordinates
 * @param to the other end
 * @param visible whether it lies open to the viewer; hidden lines are usually dashed or left out
 * @param part the name of the part whose edge it is; where edges of several parts fall on one line, the first of them
 */
public record Stroke(Vec2 from, Vec2 to, boolean visible, String part) {}

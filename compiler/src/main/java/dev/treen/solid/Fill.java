package dev.treen.solid;

import java.util.List;

/**
 * The visible area of one face in a drawing.
 *
 * @param part the name of the part
 * @param face the face it shows
 * @param outlines its outlines in the view's flat coordinates: counter-clockwise around areas, clockwise around holes
 */
public record Fill(String part, SurfaceFace face, List<List<Vec2>> outlines) {
    /** Takes its own copy of the list. */
    public Fill {
        outlines = List.copyOf(outlines);
    }
}

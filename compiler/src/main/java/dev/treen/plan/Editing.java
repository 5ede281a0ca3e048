package dev.treen.plan;

import dev.treen.check.Remembered;
import dev.treen.joinery.Subassemblies;
import dev.treen.model.EarlierValues;
import dev.treen.syntax.EditedText;

/**
 * What is kept of one version of an edited project for the next: its statements as they were read, its values, its
 * subassemblies and what was said of them. Whoever edits has one for each text; the compilations of it follow each other in the order of the
 * versions, and those before the newest are past.
 */
public final class Editing {
    private final EditedText text;
    private final EarlierValues values = new EarlierValues();
    private final Subassemblies subassemblies = new Subassemblies();
    private final Remembered remembered = new Remembered();

    /** For the text of this name, before its first version. */
    public Editing(String name) {
        text = new EditedText(name);
    }

    EditedText text() {
        return text;
    }

    EarlierValues values() {
        return values;
    }

    Subassemblies subassemblies() {
        return subassemblies;
    }

    Remembered remembered() {
        return remembered;
    }
}

package dev.treen.cli;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.source.SourceFile;
import java.util.List;

/** The kinds of finding that only a command raises: about files, before and after the compiler. */
final class CommandFindings {
    /** A project that cannot be read. */
    static final FindingKind NOT_READ = FindingKind.error("file-not-read", "The project file cannot be read");
    /** Results that cannot be written. */
    static final FindingKind NOT_WRITTEN = FindingKind.error("output-not-written", "The results cannot be written");
    /** A file that cannot be put into the one style where it stands. */
    static final FindingKind NOT_FORMATTED = FindingKind.error("file-not-formatted",
            "The file cannot be written in the one style");

    private CommandFindings() {
    }

    /** All of them. */
    static List<FindingKind> all() {
        return List.of(NOT_READ, NOT_WRITTEN, NOT_FORMATTED);
    }

    /** A finding about the file {@code name} as a whole. */
    static Finding of(FindingKind kind, String name, String headline) {
        return Finding.of(kind, new SourceFile(name, "").span(0, 0), headline).build();
    }
}

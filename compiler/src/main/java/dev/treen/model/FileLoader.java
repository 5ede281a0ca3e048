package dev.treen.model;

import dev.treen.source.SourceFile;
import java.util.Optional;

/** Finds the files that a project uses. */
public interface FileLoader {
    /** The file that {@code path}, written in {@code from}, means; empty where there is none. Never throws. */
    Optional<SourceFile> load(String path, SourceFile from);

    /** A loader without files. */
    FileLoader NONE = (path, from) -> Optional.empty();
}

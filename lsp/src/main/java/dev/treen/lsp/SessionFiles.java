package dev.treen.lsp;

import dev.treen.finding.FindingPage;
import dev.treen.lsp.feature.SpeciesPage;
import dev.treen.model.Library;
import dev.treen.plan.Compilation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/** Files that a session shows, in a folder of its own, which goes when the session ends. */
final class SessionFiles {
    private static final Logger LOG = Logger.getLogger(SessionFiles.class.getName());

    private final Map<String, Optional<Path>> pages = new ConcurrentHashMap<>();
    private Optional<Path> folder = Optional.empty();

    /**
     * Writes a file anew.
     *
     * @throws IOException where the machine's folder for what is temporary takes nothing
     */
    synchronized Path write(String name, String text) throws IOException {
        if (folder.isEmpty()) {
            folder = Optional.of(Files.createTempDirectory("treen-"));
        }
        return Files.writeString(folder.get().resolve(name), text);
    }

    /**
     * The page of a finding's code, written when it is first asked for; nothing where it cannot be or the code has
     * none.
     */
    Optional<Path> page(String code) {
        return pages.computeIfAbsent(code, each -> Compilation.kinds().stream()
                .filter(kind -> kind.code().equals(each))
                .findFirst()
                .flatMap(FindingPage::of)
                .flatMap(page -> written(each, page)));
    }

    private Optional<Path> written(String code, FindingPage page) {
        try {
            return Optional.of(write(code + ".md", page.markdown()));
        } catch (IOException | UncheckedIOException full) {
            LOG.log(Level.INFO, "The page of " + code + " could not be written", full);
            return Optional.empty();
        }
    }

    /**
     * One of the patterns that come with Treen, by its name, to be read where the name leads to: written when it is
     * first asked for, and not to be changed, for no project would notice.
     */
    Optional<Path> pattern(String name) {
        return pages.computeIfAbsent(name, each -> Library.tree(each)
                .flatMap(tree -> toRead(each.substring(Library.FOLDER.length()), tree.file().text())));
    }

    /** What the tables say of a species, by its name, to be read: written when it is first asked for. */
    Optional<Path> species(String id) {
        return pages.computeIfAbsent("species " + id, each -> SpeciesPage.of(id)
                .flatMap(page -> toRead("species-" + id + ".md", page)));
    }

    private Optional<Path> toRead(String name, String text) {
        try {
            Path path = write(name, text);
            if (!path.toFile().setReadOnly()) {
                LOG.fine("a file of the session can be written to");
            }
            return Optional.of(path);
        } catch (IOException full) {
            LOG.log(Level.INFO, full, () -> name + " could not be written");
            return Optional.empty();
        }
    }

    /** Takes away what was written. */
    synchronized void delete() {
        folder.ifPresent(SessionFiles::delete);
        folder = Optional.empty();
        pages.clear();
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
        } catch (IOException busy) {
            // The machine clears its own folder for what is temporary.
        }
    }
}

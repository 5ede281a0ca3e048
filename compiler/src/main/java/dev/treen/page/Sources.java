package dev.treen.page;

import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A project's own files, the main one first, by names that hold wherever they are put: no folder of this machine is in
 * them. A plan carries them, and can be built again from them.
 */
public final class Sources {
    /** The attribute that marks a file in a page, with the file's name. */
    static final String MARK = "data-treen-file";

    private final String main;
    private final Map<String, String> texts;

    private Sources(String main, Map<String, String> texts) {
        this.main = main;
        this.texts = new LinkedHashMap<>(texts);
    }

    /** The files in a page that Treen wrote; none if it is another page. */
    public static Optional<Sources> in(String html) {
        Document page = Jsoup.parse(html);
        Map<String, String> texts = new LinkedHashMap<>();
        for (Element each : page.select("pre[" + MARK + "]")) {
            texts.putIfAbsent(each.attr(MARK), each.wholeText());
        }
        return texts.isEmpty() ? Optional.empty() : Optional.of(new Sources(texts.keySet().iterator().next(), texts));
    }

    /** The project's main file. */
    public SourceFile main() {
        return new SourceFile(main, texts.getOrDefault(main, ""));
    }

    /** All files by name, the main one first. */
    Map<String, String> texts() {
        return new LinkedHashMap<>(texts);
    }

    /** Finds the files that use each other. */
    public FileLoader loader() {
        return (path, from) -> {
            for (String name : List.of(path + ".treen", path)) {
                Optional<String> key = beside(from.name(), name);
                if (key.isPresent() && texts.containsKey(key.get())) {
                    return Optional.of(new SourceFile(key.get(), texts.getOrDefault(key.get(), "")));
                }
            }
            return Optional.empty();
        };
    }

    private static Optional<String> beside(String from, String path) {
        try {
            return Optional.of(Path.of(from).resolveSibling(path).normalize().toString().replace('\\', '/'));
        } catch (InvalidPathException impossible) {
            return Optional.empty();
        }
    }

    /** Passes on what another loader finds, and remembers it. */
    public static final class Recorder implements FileLoader {
        private final FileLoader loader;
        private final SourceFile main;
        private final Map<String, String> names = new LinkedHashMap<>();
        private final Map<String, String> texts = new LinkedHashMap<>();

        /** Begins with the main file. */
        public Recorder(SourceFile main, FileLoader loader) {
            this.main = main;
            this.loader = loader;
            String name = last(main.name());
            names.put(main.name(), name);
            texts.put(name, main.text());
        }

        /** The main file. */
        public SourceFile main() {
            return main;
        }

        private static String last(String name) {
            List<String> steps = new ArrayList<>(List.of(name.replace('\\', '/').split("/", -1)));
            return steps.getLast();
        }

        @Override
        public synchronized Optional<SourceFile> load(String path, SourceFile from) {
            Optional<SourceFile> found = loader.load(path, from);
            found.ifPresent(file -> {
                boolean longer = file.name().endsWith(".treen") && !path.endsWith(".treen");
                String base = names.getOrDefault(from.name(), from.name());
                beside(base, longer ? path + ".treen" : path).ifPresent(name -> {
                    names.putIfAbsent(file.name(), name);
                    texts.putIfAbsent(name, file.text());
                });
            });
            return found;
        }

        /** All that was read so far. */
        public synchronized Sources sources() {
            return new Sources(names.getOrDefault(main.name(), main.name()), texts);
        }
    }
}

package dev.treen.finding;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What there is to know about one kind of finding, from the Markdown file that bears its code. The file has the sections
 * of {@link Section}, in that order, the first without a heading; the last two hold one fenced example each, which the
 * tests compile.
 *
 * @param kind the kind, which gives the title
 * @param texts what each section says, without its heading
 */
public record FindingPage(FindingKind kind, Map<Section, String> texts) {
    private static final String HEADING = "## ";

    /** Copies the texts. */
    public FindingPage {
        texts = Map.copyOf(texts);
    }

    /** A section of every page. */
    public enum Section {
        /** What the finding means. */
        MEANING(""),
        /** Why it matters when wood is cut. */
        BENCH("At the bench"),
        /** How to put it right. */
        REMEDY("What to do"),
        /** An example that gives this finding and no other. */
        BAD("Gives it"),
        /** The same put right, which gives no finding. */
        GOOD("Put right");

        private final String heading;

        Section(String heading) {
            this.heading = heading;
        }

        /** What stands over it; nothing over the first. */
        public String heading() {
            return heading;
        }
    }

    /** Where the page of a kind is among the resources of this package. */
    public static String file(FindingKind kind) {
        return "pages/" + kind.code() + ".md";
    }

    /** The page of {@code kind}; empty when it has none. */
    public static Optional<FindingPage> of(FindingKind kind) {
        try (InputStream in = FindingPage.class.getResourceAsStream(file(kind))) {
            return in == null ? Optional.empty()
                    : Optional.of(read(kind, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Reads a page. */
    static FindingPage read(FindingKind kind, String markdown) {
        Map<Section, String> texts = new LinkedHashMap<>();
        Section now = Section.MEANING;
        List<String> lines = new ArrayList<>();
        for (String line : markdown.lines().toList()) {
            if (line.startsWith(HEADING)) {
                texts.put(now, String.join("\n", lines).strip());
                lines.clear();
                now = section(line.substring(HEADING.length()));
            } else {
                lines.add(line);
            }
        }
        texts.put(now, String.join("\n", lines).strip());
        return new FindingPage(kind, texts);
    }

    private static Section section(String heading) {
        for (Section section : Section.values()) {
            if (section.heading.equals(heading)) {
                return section;
            }
        }
        throw new IllegalArgumentException("a page of findings has no section `" + heading + "`");
    }

    /** What a section says; nothing when the page lacks it. */
    public String text(Section section) {
        return texts.getOrDefault(section, "");
    }

    /** The page for a terminal: the title, the texts, and the examples set in from the margin. */
    public String plain() {
        StringBuilder out = new StringBuilder(kind.severity().word() + " " + kind.code() + ": " + kind.title() + ".\n");
        for (Section section : Section.values()) {
            out.append('\n');
            if (!section.heading.isEmpty()) {
                out.append(section.heading).append(":\n");
            }
            boolean example = section == Section.BAD || section == Section.GOOD;
            text(section).lines().filter(line -> !line.startsWith("```")).forEach(
                    line -> out.append(example && !line.isEmpty() ? "    " : "").append(line).append('\n'));
        }
        return out.toString();
    }

    /** The page as a part of a longer Markdown document. */
    public String markdown() {
        StringBuilder out = new StringBuilder("### " + kind.code() + "\n\n");
        out.append(kind.title()).append(" (").append(kind.severity().word()).append(").\n");
        for (Section section : Section.values()) {
            out.append('\n');
            if (!section.heading.isEmpty()) {
                out.append("**").append(section.heading).append(".**")
                        .append(section == Section.BAD || section == Section.GOOD ? "\n\n" : " ");
            }
            out.append(text(section)).append('\n');
        }
        return out.toString();
    }
}

package dev.treen.rewrite;

import dev.treen.finding.Edit;
import dev.treen.joinery.JointKinds;
import dev.treen.model.FileLoader;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.model.Project;
import dev.treen.model.Usage;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts a use of a pattern in the place of parts and joints that are written out one by one and come to the same.
 *
 * <p>It is done for a thing whose parts are all statements of their own at the top of the file, joined to each other and to
 * nothing else, or are all parts of the project, and which stands as the pattern draws it, not turned. Choices and counts are tried; lengths and sizes are
 * solved where they have no standard or one that is written in figures; what a part or a named joint has besides goes into
 * the block of the instance. Anything that then is not the same in every size, joint and finding is not handed out.
 */
public final class PatternUse {
    private static final int MOST_PARTS = 60;

    private final Compilation before;
    private final FileLoader loader;
    private final Thing thing;
    private final Set<Statement> written;

    /**
     * What is written instead.
     *
     * @param pattern the name of the pattern
     * @param name how the thing is called
     * @param edits what changes in the file
     */
    public record Written(String pattern, String name, List<Edit> edits) {
        /** Keeps its own copy. */
        public Written {
            edits = List.copyOf(edits);
        }
    }

    private PatternUse(Compilation before, FileLoader loader, Thing thing, Set<Statement> written) {
        this.before = before;
        this.loader = loader;
        this.thing = thing;
        this.written = written;
    }

    /** The uses that come to the same as the thing of which {@code statement} is a part or a joint. */
    public static List<Written> of(Compilation project, FileLoader loader, int offset) {
        return things(project, offset).stream()
                .flatMap(thing -> statements(project, thing).stream()
                        .flatMap(written -> new PatternUse(project, loader, thing, written).all().stream()))
                .toList();
    }

    /** A glance at whether there is a thing of joined parts at {@code offset}, all written out in this file. */
    public static boolean mayBe(Compilation project, int offset) {
        return things(project, offset).stream().anyMatch(thing -> statements(project, thing).isPresent());
    }

    /** What joints tie to the part, and all parts of the project: not all that belongs together is joined. */
    private static List<Thing> things(Compilation project, int offset) {
        Project read = project.evaluation().project();
        return thing(project, offset)
                .map(tied -> tied.parts().size() == read.parts().size() || read.parts().size() > MOST_PARTS
                        ? List.of(tied)
                        : List.of(tied, Thing.of(read)))
                .orElse(List.of());
    }

    private static Optional<Thing> thing(Compilation compilation, int offset) {
        Project project = compilation.evaluation().project();
        for (Statement statement : compilation.tree().statements()) {
            if (statement.span().touches(offset) && !Compilation.hasErrors(project.findings())) {
                Optional<Part> part = project.parts().stream()
                        .filter(each -> isIn(statement, each.nameAt()))
                        .findFirst()
                        .or(() -> project.joints().stream()
                                .filter(each -> isIn(statement, each.at()))
                                .map(Joint::left)
                                .findFirst());
                return part.map(each -> Thing.around(project, each))
                        .filter(each -> each.parts().size() > 1 && each.parts().size() <= MOST_PARTS);
            }
        }
        return Optional.empty();
    }

    private static boolean isIn(Statement statement, Span place) {
        boolean own = statement instanceof Statement.Part || statement instanceof Statement.Joint;
        Span span = statement.span();
        return own && span.file().name().equals(place.file().name()) && span.start() <= place.start()
                && place.end() <= span.end();
    }

    /** The statements that make up a thing; none where one of its parts or joints is not written by itself. */
    private static Optional<Set<Statement>> statements(Compilation project, Thing thing) {
        Set<Statement> found = new LinkedHashSet<>();
        List<Statement> all = project.tree().statements();
        for (Part part : thing.parts().values()) {
            Optional<Statement> own = all.stream().filter(each -> isIn(each, part.nameAt())).findFirst();
            if (own.isEmpty() || !(own.get() instanceof Statement.Part plain) || plain.index().isPresent()) {
                return Optional.empty();
            }
            found.add(own.get());
        }
        for (Joint joint : thing.joints()) {
            Optional<Statement> own = all.stream().filter(each -> isIn(each, joint.at())).findFirst();
            if (own.isEmpty()) {
                return Optional.empty();
            }
            found.add(own.get());
        }
        return Optional.of(found);
    }

    private List<Written> all() {
        Set<String> kinds = thing.joints().stream().map(Joint::kind).collect(Collectors.toSet());
        boolean known = kinds.stream().allMatch(kind -> JointKinds.named(kind).isPresent());
        List<Written> all = new ArrayList<>();
        for (PatternSource source : known ? PatternSource.of(before.tree(), loader) : List.<PatternSource>of()) {
            Solver.fit(source, thing).flatMap(fit -> used(source, fit)).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Written> used(PatternSource source, Solver.Fit fit) {
        String name = InstanceText.name(before, source.name());
        Map<String, String> renamed = new LinkedHashMap<>();
        fit.names().forEach((theirs, ours) -> renamed.put(ours, name + "." + theirs));
        InstanceText text = new InstanceText(before, thing, written, source, fit);
        Set<Statement> gone = new LinkedHashSet<>(written);
        gone.addAll(text.restedOnNoMore());
        SourceFile file = before.file();
        List<Span> stretches = Stretches.of(before.tree(), gone);
        int begins = written.stream().mapToInt(each -> each.span().start()).min().orElse(0);
        List<Edit> edits = new ArrayList<>(
                Stretches.without(file, stretches, text.written(name), begins));
        edits.addAll(said(renamed, stretches));
        source.path().ifPresent(path -> edits.add(use(path)));
        edits.sort(Comparator.comparingInt(edit -> edit.at().start()));
        Compilation after = Compilation.of(
                new SourceFile(file.name(), Edit.applied(file.text(), edits)), loader);
        return new SameProject(renamed).as(before, after)
                ? Optional.of(new Written(source.name(), name, edits))
                : Optional.empty();
    }

    /** Its parts have other names where the rest of the file speaks of them. */
    private List<Edit> said(Map<String, String> renamed, List<Span> gone) {
        Map<Integer, Edit> edits = new LinkedHashMap<>();
        for (Usage usage : before.evaluation().usages()) {
            String name = usage.declaredAt().text();
            int start = usage.at().start();
            boolean stays = gone.stream().noneMatch(each -> each.start() <= start && start < each.end())
                    && usage.at().file().name().equals(before.file().name());
            boolean ofThing = thing.parts().containsKey(name)
                    && usage.declaredAt().start() == partAt(name).start() && usage.at().text().startsWith(name);
            if (stays && ofThing) {
                edits.put(start, new Edit(before.file().span(start, start + name.length()),
                        renamed.getOrDefault(name, name)));
            }
        }
        return List.copyOf(edits.values());
    }

    private Span partAt(String name) {
        return Optional.ofNullable(thing.parts().get(name)).map(Part::nameAt).orElse(before.tree().beginning());
    }

    /** The line that takes in the pattern: behind the last of its kind, or behind the project. */
    private Edit use(String path) {
        SourceFile file = before.file();
        Optional<Statement> last = before.tree().statements().stream()
                .filter(Statement.Use.class::isInstance)
                .reduce((one, other) -> other);
        Optional<Statement> project = before.tree().statements().stream()
                .filter(Statement.Project.class::isInstance)
                .findFirst();
        String line = "use \"" + path + "\"";
        Optional<Statement> above = last.or(() -> project);
        if (above.isEmpty()) {
            return new Edit(file.span(0, 0), line + "\n\n");
        }
        int row = file.lineOf(above.get().span().end());
        int end = file.lineStart(row) + file.lineText(row).length();
        return new Edit(file.span(end, end), (last.isPresent() ? "\n" : "\n\n") + line);
    }
}

package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.SyntaxTree;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Works out what a project means: declares its names, then asks for every value. Nothing is thrown for what a user
 * wrote; what cannot be worked out is reported once and left out.
 */
public final class Evaluator {
    /** How many parts one project may have. */
    public static final int MOST = 20_000;

    /** How often the repeats of one project may go round, all together. */
    public static final int MOST_ROUNDS = 10_000;

    private static final Span NOWHERE = new Span(new SourceFile("", ""), 0, 0);

    private final SyntaxTree tree;
    private final Map<String, JointSchema> jointSchemas = new LinkedHashMap<>();
    private final EarlierValues earlier;
    private final Session session;
    private final Expressions expressions;
    private final Reader reader;
    private final SettingsReader settingsReader;
    private final Files files;
    private final Boards boards;
    private final Declarations declarations;
    private final Sequence declared = new Sequence();

    private Evaluator(SyntaxTree tree, FileLoader loader, List<JointSchema> kinds, EarlierValues earlier) {
        this.tree = tree;
        this.earlier = earlier;
        kinds.forEach(kind -> jointSchemas.put(kind.kind(), kind));
        session = earlier.session();
        expressions = earlier.expressions();
        reader = earlier.reader();
        settingsReader = new SettingsReader(session, reader, expressions);
        files = new Files(session, loader, settingsReader, earlier);
        boards = new Boards(session, reader, settingsReader, StandardAllowances.of(true, NOWHERE));
        declarations = new Declarations(session, expressions, reader, files, boards, settingsReader, earlier);
    }

    /** What {@code tree} means, with the files that {@code loader} finds and the joints of {@code kinds}. */
    public static Evaluation evaluate(SyntaxTree tree, FileLoader loader, List<JointSchema> kinds) {
        return evaluate(tree, loader, kinds, new EarlierValues());
    }

    /** The same, with what {@code earlier} keeps of the version before, which then keeps what it can of this one. */
    public static Evaluation evaluate(
            SyntaxTree tree, FileLoader loader, List<JointSchema> kinds, EarlierValues earlier) {
        boolean done = false;
        try {
            Evaluation evaluation = evaluated(tree, loader, kinds, earlier);
            done = true;
            return evaluation;
        } finally {
            if (!done) {
                // Nothing half done is ever taken over.
                earlier.clear();
            }
        }
    }

    private static Evaluation evaluated(
            SyntaxTree tree, FileLoader loader, List<JointSchema> kinds, EarlierValues earlier) {
        earlier.begin(tree);
        Evaluator planned = new Evaluator(tree, loader, kinds, earlier);
        Project asPlanned = planned.run();
        if (earlier.chainsAreLong()) {
            earlier.clear();
            earlier.begin(tree);
            planned = new Evaluator(tree, loader, kinds, earlier);
            asPlanned = planned.run();
            earlier.clear();
        }
        List<Sequence.ToMeasure> measured = planned.declared.all(Sequence.ToMeasure.class);
        if (measured.isEmpty()) {
            return planned.evaluation(asPlanned);
        }
        Session aside = new Session();
        Measurements measurements = planned.measurements(measured, aside);
        EarlierValues alone = new EarlierValues(measurements.values(asPlanned));
        alone.begin(tree);
        Evaluator real = new Evaluator(tree, loader, kinds, alone);
        Project asMade = real.run();
        real.session.findings.addAll(aside.findings);
        List<Measurement> taken = measurements.report(asPlanned, asMade, real.session);
        return real.evaluation(asMade.with(taken, real.session.findings));
    }

    /** What is measured, found in the project as planned; faults go to {@code aside}. */
    private Measurements measurements(List<Sequence.ToMeasure> measured, Session aside) {
        int before = session.findings.size();
        Measurements measurements = new Measurements(session, expressions);
        measured.forEach(measurements::find);
        aside.findings.addAll(session.findings.subList(before, session.findings.size()));
        return measurements;
    }

    private Evaluation evaluation(Project project) {
        return new Evaluation(
                project, session.symbols, session.usages, session.bareNumbers, declarations.schemas());
    }

    private Project run() {
        session.findings.addAll(tree.findings());
        Scope scope = files.first(tree);
        declarations.declare(tree.statements(), scope, declared);
        Settings settings = session.noting(earlier.ofSettings(), () -> settingsReader.read(tree, scope));
        boards.standard(settings.allow());
        askEverything(scope);
        List<Board> madeBoards = declared.all(BoardEntry.class).stream()
                .flatMap(b -> b.board().stream())
                .toList();
        Map<String, Part> parts = parts(settings);
        Joints joints = new Joints(session, expressions, reader, declarations.instances(), jointSchemas, parts,
                earlier);
        declared.all(Sequence.ToJoin.class).forEach(joints::make);
        session.instances.values().forEach(i -> session.within(
                i.use().instance(), () -> i.overrules().reportUnmet(session, i, joints.namesIn(i))));
        files.reportSameNames();
        List<Requirement> requirements = declared.all(Sequence.ToRequire.class).stream()
                .map(r -> new Requirement(r.statement(), r.scope(), session))
                .toList();
        requirements.forEach(Requirement::read);
        Wishes wishes = new Wishes(session, expressions);
        Holdings holdings = new Holdings(session, expressions, reader);
        List<Acceptance> acceptances = declared.all(Sequence.ToAccept.class).stream().map(wishes::acceptance).toList();
        List<GrainRun> runs = declared.all(Sequence.ToRun.class).stream().flatMap(r -> wishes.run(r).stream()).toList();
        List<Holding> held = declared.all(Sequence.ToHold.class).stream().flatMap(h -> holdings.read(h).stream())
                .toList();
        earlier.gather(tree);
        Project project = new Project(
                tree.file(),
                settings,
                madeBoards,
                List.copyOf(parts.values()),
                joints.made(),
                requirements,
                acceptances,
                runs,
                held,
                session.instances.values().stream().map(Instance::new).toList(),
                List.of(),
                session.hardware,
                session.findings);
        boolean nothing = parts.isEmpty() && session.findings.isEmpty() && !describesSomething(scope);
        return nothing ? project.with(List.of(), List.of(nothingToMake())) : project;
    }

    /** A file of patterns, boards or settings is there for others to use. */
    private static boolean describesSomething(Scope scope) {
        return !scope.entries().isEmpty() || !scope.used().isEmpty();
    }

    private Finding nothingToMake() {
        return Finding.of(
                ModelFindings.EMPTY_PROJECT,
                tree.beginning(),
                "There are no parts in this file, so there is nothing to make")
                .remedy(new Remedy(
                        "write a part, as `part lid { length 160; width 80; thickness 9 }`",
                        Remedy.Grade.NEEDS_VALUE,
                        List.of()))
                .build();
    }

    /** Every value is asked for, so that no fault stays hidden; that may make more instances. */
    private void askEverything(Scope scope) {
        int asked = 0;
        while (asked < session.instances.size()) {
            List<InstanceEntry> all = List.copyOf(session.instances.values());
            for (InstanceEntry instance : all.subList(asked, all.size())) {
                declarations.instances().finish(instance);
            }
            asked = all.size();
        }
        scope.entries().values().forEach(entry -> {
            if (entry instanceof Scope.Constant constant) {
                constant.cell().value();
            }
        });
        session.hasAskedAll();
    }

    private Map<String, Part> parts(Settings settings) {
        Parts maker = new Parts(
                session, expressions, reader, settingsReader, declarations.instances(), settings);
        Map<String, Part> made = new LinkedHashMap<>();
        for (PartEntry entry : declared.all(PartEntry.class)) {
            maker.part(entry).ifPresent(p -> made.put(p.name(), p));
        }
        return made;
    }
}

package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JoineryFindings;
import dev.treen.model.Acceptance;
import dev.treen.model.Instance;
import dev.treen.model.ModelFindings;
import dev.treen.model.Requirement;
import dev.treen.source.Span;
import dev.treen.syntax.SyntaxFindings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Every check, run over a project; then what the project accepts is taken away and the rest put in order. */
public final class Checks {
    /** More findings than this in one file help nobody. */
    public static final int MOST_IN_A_FILE = 100;

    private static final FindingKind WITHOUT_REASON = FindingKind.error("accept-without-reason",
            "A finding is accepted without a reason");
    private static final FindingKind MATCHES_NOTHING = FindingKind.warning("accept-matches-nothing",
            "An accepted finding is not there");
    private static final FindingKind CANNOT_ACCEPT = FindingKind.error("accept-of-an-error",
            "An error cannot be accepted");
    private static final FindingKind AND_MORE = FindingKind.note("and-more", "There are more findings");

    /** What looks at a whole project. */
    private static final List<Check> OF_PROJECTS = List.of(
            new KnownSpecies(),
            new Assumptions(),
            new ContentsFit(),
            new SawDepth(),
            new NotAcclimatised(),
            new TooWet(),
            new OpeningTight(),
            new ResawMoves(),
            new NeedsAnchor(),
            new LidGrip(),
            new GrainBreaks());

    /** What looks no further than at parts that joints tie together. */
    private static final List<Check> OF_SUBASSEMBLIES = List.of(
            new PanelTight(),
            new PanelLoose(),
            new ShoulderTight(),
            new GrooveDepth(),
            new GrooveNearEdge(),
            new TongueAgainstGroove(),
            new CrossGrainGlue(),
            new MitreOpens(),
            new BoardTooSmall(),
            new RingsContradict(),
            new ShelfSags(),
            new TwoFixedLines(),
            new CarcaseFights(),
            new LegDiamonds(),
            new Cups(),
            new BackBuckles(),
            new DrawerBottomShort(),
            new OneFaceFinished(),
            new StavesStep(),
            new MakingErrors(),
            new EndGrainCarries(),
            new PullsOut());

    /** What looks at the bodies of a whole project. */
    private static final List<BodyCheck> OF_ALL_BODIES = List.of(
            new PartsClash(),
            new SlidesOut());

    /** What looks at the bodies of parts that joints tie together, and at what stands near those. */
    private static final List<BodyCheck> OF_TIED_BODIES = List.of(
            new JointTouches(),
            new GoesTogether(),
            new GrooveShows(),
            new CutsMeet(),
            new WallThin());

    private Checks() {
    }

    /** The kinds of finding of all layers up to here. */
    public static List<FindingKind> kinds() {
        List<FindingKind> kinds = new ArrayList<>(SyntaxFindings.all());
        kinds.addAll(ModelFindings.all());
        kinds.addAll(JoineryFindings.all());
        Stream.concat(OF_PROJECTS.stream(), OF_SUBASSEMBLIES.stream())
                .forEach(check -> kinds.addAll(check.kinds()));
        kinds.addAll(ofBodies());
        kinds.addAll(List.of(WITHOUT_REASON, MATCHES_NOTHING, CANNOT_ACCEPT, AND_MORE));
        return kinds;
    }

    /** The kinds of finding that only finished bodies show. */
    static List<FindingKind> ofBodies() {
        return bodyChecks().stream().flatMap(check -> check.kinds().stream()).toList();
    }

    /** Every check of finished bodies. */
    static List<BodyCheck> bodyChecks() {
        return Stream.concat(OF_ALL_BODIES.stream(), OF_TIED_BODIES.stream()).toList();
    }

    /** The project with all that Treen has to say of it. */
    public static Checked check(Joined joined) {
        Checked quick = quickly(joined, new Remembered());
        return quick.with(bodies(quick, new Remembered(), () -> false));
    }

    /** The project with what can be said at every keystroke: without what only finished bodies show. */
    public static Checked quickly(Joined joined, Remembered remembered) {
        List<Finding> found = new ArrayList<>(joined.project().findings());
        found.addAll(joined.findings());
        OF_PROJECTS.forEach(check -> found.addAll(check.run(joined)));
        found.addAll(remembered.quick(joined.subassemblies(), each -> tied(each.joined())));
        Facts facts = Facts.of(joined);
        for (Requirement requirement : joined.project().requirements()) {
            found.addAll(requirement.judge(facts, joined.project().settings().format()));
        }
        found.replaceAll(finding -> Instance.atUse(finding, joined.project().instances()));
        return new Checked(joined, facts, found, Optional.empty(),
                settled(found, joined.project().acceptances(), ofBodies()));
    }

    /** What is to be said of parts that joints tie together, all that there are in {@code joined}. */
    static List<Finding> tied(Joined joined) {
        List<Finding> found = new ArrayList<>();
        OF_SUBASSEMBLIES.forEach(check -> found.addAll(check.run(joined)));
        return found;
    }

    /**
     * What the finished bodies of a project show, whatever joints made them; it takes longer. Nothing where there is an
     * error already: with a joint that could not be made the bodies are not those that are meant.
     *
     * @param stopped asked between subassemblies; what has been said of those before is remembered
     * @throws java.util.concurrent.CancellationException once it is stopped
     */
    public static List<Finding> bodies(Checked quick, Remembered remembered, BooleanSupplier stopped) {
        if (quick.found().stream().anyMatch(finding -> finding.severity() == Severity.ERROR)) {
            return List.of();
        }
        Joined joined = quick.joined();
        Standing standing = Standing.of(joined);
        List<Finding> found = new ArrayList<>(
                remembered.bodies(joined.subassemblies(), standing, Checks::tiedBodies, stopped));
        for (BodyCheck check : OF_ALL_BODIES) {
            Remembered.goOnUnless(stopped);
            found.addAll(check.run(joined, standing));
        }
        found.replaceAll(finding -> Instance.atUse(finding, joined.project().instances()));
        return found;
    }

    /** What the bodies of parts that joints tie together show, all that there are in {@code joined}. */
    static List<Finding> tiedBodies(Joined joined, Standing standing) {
        List<Finding> found = new ArrayList<>();
        OF_TIED_BODIES.forEach(check -> found.addAll(check.run(joined, standing)));
        return found;
    }

    /**
     * Accepted findings away, in the order of their places, at most a hundred a file. An acceptance is not said to match
     * nothing while {@code later} has kinds of finding that have not been looked for.
     */
    static List<Finding> settled(List<Finding> found, List<Acceptance> acceptances, List<FindingKind> later) {
        Set<Finding> left = new LinkedHashSet<>(found);
        for (Acceptance acceptance : acceptances) {
            accept(acceptance, left, later);
        }
        List<Finding> ordered = new ArrayList<>(left);
        ordered.sort(Comparator.comparing((Finding f) -> f.at().file().name())
                .thenComparingInt(f -> f.at().start())
                .thenComparingInt(f -> f.at().end())
                .thenComparing(Finding::code));
        Map<String, Integer> counts = new LinkedHashMap<>();
        List<Finding> shown = new ArrayList<>();
        for (Finding each : ordered) {
            boolean endOfList = each.kind().equals(SyntaxFindings.MORE_FINDINGS);
            if (endOfList || counts.merge(each.at().file().name(), 1, Integer::sum) <= MOST_IN_A_FILE) {
                shown.add(each);
            }
        }
        counts.forEach((file, count) -> {
            if (count > MOST_IN_A_FILE) {
                Span at = shown.stream()
                        .filter(f -> f.at().file().name().equals(file))
                        .reduce((a, b) -> b)
                        .orElseThrow()
                        .at();
                shown.add(Finding
                        .of(AND_MORE, at, "There are " + (count - MOST_IN_A_FILE) + " more findings in this file")
                        .build());
            }
        });
        return shown;
    }

    /** Whether {@code subject} is {@code whole}, or a thing inside it: a part of an instance, a number of a row. */
    private static boolean isPartOf(String subject, String whole) {
        return subject.equals(whole) || subject.startsWith(whole + ".") || subject.startsWith(whole + "[");
    }

    private static void accept(Acceptance acceptance, Set<Finding> left, List<FindingKind> later) {
        if (acceptance.because().filter(b -> !b.isBlank()).isEmpty()) {
            left.add(Finding.of(
                    WITHOUT_REASON,
                    acceptance.at().endPoint(),
                    "`" + acceptance.code() + "` is accepted without a reason")
                    .because("Whoever makes it again wants to know why this is right here.")
                    .found("Write `because \"…\"` at the end of the line.")
                    .build());
            return;
        }
        List<Finding> matching = left.stream()
                .filter(f -> f.code().equals(acceptance.code()))
                .filter(f -> acceptance.on().isEmpty()
                        || f.subjects().stream()
                                .anyMatch(s -> acceptance.on().stream().anyMatch(on -> isPartOf(s, on))))
                .toList();
        if (matching.isEmpty() && later.stream().noneMatch(kind -> kind.code().equals(acceptance.code()))) {
            left.add(Finding.of(
                    MATCHES_NOTHING,
                    acceptance.codeAt(),
                    "There is no `" + acceptance.code() + "` to accept"
                            + (acceptance.on().isEmpty()
                                    ? ""
                                    : " on `" + String.join("`, `", acceptance.on()) + "`"))
                    .because("A line that accepts nothing hides the next finding of its kind.")
                    .build());
        }
        for (Finding finding : matching) {
            if (finding.severity() == Severity.ERROR) {
                left.add(Finding.of(
                        CANNOT_ACCEPT,
                        acceptance.codeAt(),
                        "`" + acceptance.code() + "` is an error here and cannot be accepted")
                        .related(finding.at(), finding.headline())
                        .build());
            } else {
                left.remove(finding);
            }
        }
    }
}

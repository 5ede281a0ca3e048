package dev.treen.joinery;

import java.util.List;

/** The work that dovetailed corners ask for: tails first, or, where laps hide them, pins first. */
final class DovetailWorks {
    private final List<String> tailed;
    private final List<String> pinned;
    private final List<String> all;
    private final boolean lapped;
    private final Work.GaugeSetting tails;
    private final Work.GaugeSetting pins;
    private final Work.GaugeSetting lap;
    private final Work.GaugeSetting mitre;

    private DovetailWorks(List<MadeJoint> statement) {
        this.tailed = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        this.pinned = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        this.all = Rebate.names(statement);
        MadeJoint first = statement.getFirst();
        this.lapped = first.figure("lap").isPresent();
        this.lap = new Work.GaugeSetting("lap", Work.figure(statement, "lap"));
        this.mitre = new Work.GaugeSetting("mitred edge", Work.figure(statement, "mitre"));
        this.tails = new Work.GaugeSetting("base line of the tails", Work.figure(statement, "deep"));
        this.pins = new Work.GaugeSetting(
                "base line of the pins", BoxCorner.of(first.meeting()).orElseThrow().thicknessOfFirst().value());
    }

    static List<Work> of(List<MadeJoint> statement) {
        DovetailWorks works = new DovetailWorks(statement);
        boolean secret = statement.getFirst().joint().word("cut").filter(Dovetail.SECRET::equals).isPresent();
        return secret ? works.secret() : works.shown();
    }

    private List<Work> shown() {
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Gauge, saw and chop the tails",
                        tailed,
                        List.of(),
                        "cutting gauge, dovetail square, fine saw, chisel",
                        List.of(tails),
                        "the end, shot square; the tails square across it",
                        "the saw cuts are square across the end: only the tails' slope may be off",
                        "Chop from both faces, the work clamped and both hands behind the edge."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Scribe the pins from the tails as cut, saw them in the waste" + (lapped
                                ? " as far as the lap lets the saw, and chop the sockets"
                                : " and chop between them"),
                        pinned,
                        tailed,
                        "knife, fine saw, chisel",
                        lapped ? List.of(pins, lap) : List.of(pins),
                        "the inside face; each corner marked with its own number",
                        "it goes together once, with light taps, and closes at the base line",
                        "Pare away from the hand that holds the work."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the slopes of the tails and tap the dovetails home",
                        all,
                        List.of(),
                        "glue brush, mallet, cauls cut out for the pins",
                        List.of(),
                        "",
                        "diagonals equal while the glue is wet",
                        "Read the glue's label."));
    }

    /** The pins first: the laps leave no room to scribe pins from tails (common practice, no source). */
    private List<Work> secret() {
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Rebate the ends to their laps, then gauge, saw and chop the pins behind them",
                        pinned,
                        List.of(),
                        "cutting gauge, dovetail square, fine saw, chisel",
                        List.of(lap, tails, mitre),
                        "the inside face and the end, shot square",
                        "the sockets are flat and stop at the lap",
                        "The work clamped, both hands behind the edge."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Rebate the ends to their laps, scribe the tails from the pins as cut, saw and chop them",
                        tailed,
                        pinned,
                        "cutting gauge, knife, fine saw, chisel",
                        List.of(lap, tails, mitre),
                        "the inside face; each corner marked with its own number",
                        "tails and pins go into each other as far as the laps let them",
                        "Pare away from the hand that holds the work."),
                new Work(
                        Work.Stage.AFTER_MEASURING,
                        "Saw the mitres at the edges, and plane the laps to the mitre against a block",
                        all,
                        List.of(),
                        "fine saw, shoulder plane, block cut at 45°",
                        List.of(mitre),
                        "the outer corner",
                        "the mitre closes at the outside when the corner is tapped home",
                        "Pare away from the hand that holds the work."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the slopes of the tails and the mitres, and tap the dovetails home",
                        all,
                        List.of(),
                        "glue brush, mallet, cauls",
                        List.of(),
                        "",
                        "diagonals equal while the glue is wet",
                        "Read the glue's label."));
    }
}

package dev.treen.lsp.feature;

import java.util.List;
import java.util.Optional;

/** The words of the language that no schema holds: what begins a statement, and what stands within one. */
final class Keywords {
    /** A word, what it does, and an example. */
    record Keyword(String word, String doc, String example) {}

    /** Those that begin a statement. */
    static final List<Keyword> STATEMENTS = List.of(
            new Keyword("use", "Takes in the names of another file, or of a pattern that comes with Treen.",
                    "use \"treen/box\""),
            new Keyword("let", "Gives a value a name. Whatever is reckoned with it follows when it changes.",
                    "let wall = 9"),
            new Keyword("joint", "Brings parts together: they get what it takes, and their neighbours what it needs.",
                    "joint mitre front to left"),
            new Keyword("require", "Says what must hold. It is a finding where it does not.",
                    "require lid.width <= 90mm because \"it goes into the drawer\""),
            new Keyword("accept", "Takes a warning as it is, with the reason, so that it is not told again.",
                    "accept panel-tight on base because \"the room is dry\""),
            new Keyword("measured", "A size as it came out at the bench: later parts are fitted to it.",
                    "measured caddy.opening.width 79.4"),
            new Keyword("holds", "What goes inside, so that it is checked that it fits.",
                    "holds caddy { tin 150 x 70 x 60; count 1 }"),
            new Keyword("repeat", "Makes numbered parts. The name counts the turns, from the first to the last.",
                    "repeat i in 1..3 { part shelf[i] { length 300; width 90; thickness 12 } }"),
            new Keyword("when", "What holds only on a condition; `else { … }` behind it what holds otherwise.",
                    "when lidded { part lid { length 160; width 80; thickness 7 } }"),
            new Keyword("pattern",
                    "A thing that can be made many times, in other sizes: its name then makes instances.",
                    "pattern frame { param stile : length = 57mm }"),
            new Keyword("param",
                    "What an instance of the pattern may say, its type, and what holds when it says nothing.",
                    "param stile : length = 57mm"));

    private static final List<Keyword> WITHIN = List.of(
            new Keyword("like", "As another part, but for what the block says.",
                    "part right like left { width 82 }"),
            new Keyword("to", "The parts meet as equals: none goes into the other.", "joint mitre front to left"),
            new Keyword("into", "The left part goes into the right one, which is cut for it.",
                    "joint groove base into front"),
            new Keyword("as", "Gives a joint, or a file that is used, a name of its own.",
                    "use \"shop/rack\" as rack"),
            new Keyword("on", "The parts that an accepted warning is about.",
                    "accept panel-tight on base because \"the room is dry\""),
            new Keyword("because", "The reason, for whoever reads the plan.",
                    "require lid.width <= 90mm because \"it goes into the drawer\""),
            new Keyword("in", "Over which numbers a `repeat` counts.", "repeat i in 1..3 { … }"),
            new Keyword("overall", "The size is meant with what its joints take; without it, as it is seen.",
                    "length 178 overall"),
            new Keyword("one", "A parameter that is one of a few words.", "param lid : one of flat, raised = flat"),
            new Keyword("of", "A parameter that is one of a few words.", "param lid : one of flat, raised = flat"),
            new Keyword("x", "Between the measures of a size: length, width, thickness.", "size 900 x 140 x 27"),
            new Keyword("and", "Both must hold.", "require a < b and b < c"),
            new Keyword("or", "One of both must hold.", "require a < b or b < c"),
            new Keyword("not", "It must not hold.", "when not lidded { … }"),
            new Keyword("true", "It holds.", "let lidded = true"),
            new Keyword("false", "It does not hold.", "let lidded = false"),
            new Keyword("then", "The value where the condition holds.", "let t = when big then 12 else 9"),
            new Keyword("else", "What holds, or the value, where the condition does not.",
                    "let t = when big then 12 else 9"));

    private Keywords() {
    }

    /** The word, where it is one of these. */
    static Optional<Keyword> named(String word) {
        return STATEMENTS.stream().filter(each -> each.word().equals(word)).findFirst()
                .or(() -> WITHIN.stream().filter(each -> each.word().equals(word)).findFirst());
    }
}

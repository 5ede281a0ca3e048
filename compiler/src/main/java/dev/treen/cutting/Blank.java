package dev.treen.cutting;

import dev.treen.model.GlueUp;
import java.util.List;

/**
 * What is sawn from a board in one piece: a part, a stave of a part that is glued up, or a blank that is resawn into leaves
 * which are one of these each.
 *
 * @param members what becomes of it, leaf by leaf; one where it is not resawn
 */
public record Blank(List<Member> members) {
    /** Keeps its own copy. */
    public Blank {
        members = List.copyOf(members);
    }

    /**
     * A part or a stave of one.
     *
     * @param part its name
     * @param stave which stave, from 1; {@link #WHOLE} where the part is in one piece
     */
    public record Member(String part, int stave) {
        /** The part is in one piece. */
        public static final int WHOLE = 0;

        /** {@code lid}, or {@code lid stave 2}. */
        public String name() {
            return stave == WHOLE ? part : part + " stave " + stave;
        }
    }

    static Blank of(String part) {
        return new Blank(List.of(new Member(part, Member.WHOLE)));
    }

    /** The blanks of a part in so many staves: one each, or one of all where they are the leaves of a book. */
    static List<Blank> staves(String part, int count, GlueUp.Match match) {
        List<Member> staves = java.util.stream.IntStream.rangeClosed(1, count)
                .mapToObj(stave -> new Member(part, stave))
                .toList();
        return match == GlueUp.Match.BOOK ? List.of(new Blank(staves))
                : staves.stream().map(stave -> new Blank(List.of(stave))).toList();
    }

    /** {@code lid}, {@code lid stave 2}, {@code left + right}. */
    public String name() {
        return String.join(" + ", members.stream().map(Member::name).toList());
    }

    /** The parts that the blank of a name goes into, as an earlier plan called it. */
    static List<String> partsOf(String name) {
        return List.of(name.split(" \\+ ", -1)).stream()
                .map(each -> each.replaceFirst(" stave \\d+$", ""))
                .distinct()
                .toList();
    }

    /** The parts that it goes into, each once. */
    public List<String> parts() {
        return members.stream().map(Member::part).distinct().toList();
    }

    /** Whether it is a part as it is sawn out. */
    public boolean plain() {
        return members.size() == 1 && members.getFirst().stave() == Member.WHOLE;
    }

    /** Whether it is resawn after it is sawn out. */
    public boolean resawn() {
        return members.size() > 1;
    }
}

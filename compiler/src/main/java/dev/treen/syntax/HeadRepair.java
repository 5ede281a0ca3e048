package dev.treen.syntax;

import dev.treen.grammar.TreenLexer;
import dev.treen.grammar.TreenParser.LineContext;
import dev.treen.syntax.LineParser.Attempt;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Makes the best of a head that does not read: puts in what is missing, passes over what cannot stand there, or keeps
 * its beginning.
 */
final class HeadRepair {
    private static final List<Integer> MISSING = List.of(
            TreenLexer.HOLE,
            TreenLexer.TEXT,
            TreenLexer.ASSIGN,
            TreenLexer.COLON,
            TreenLexer.RPAREN,
            TreenLexer.RBRACK,
            TreenLexer.TO,
            TreenLexer.IN,
            TreenLexer.THEN,
            TreenLexer.ELSE);
    private static final int MOST_ROUNDS = 12;

    private final LineParser parser;

    HeadRepair(LineParser parser) {
        this.parser = parser;
    }

    /** What was done to a head to make it read. */
    enum Kind {
        /** Something was put in where it is missing. */
        PUT_IN,
        /** A token that cannot stand there was passed over. */
        PASSED_OVER,
        /** Only the beginning was kept. */
        CUT_SHORT
    }

    /**
     * A head that reads now.
     *
     * @param line what it reads as
     * @param kind what was done
     * @param at the index, in the head as written, of the place
     * @param type the type of the token that was put in, or {@link TreenLexer#HOLE}
     */
    record Repaired(LineContext line, Kind kind, int at, int type) {}

    /** The best reading of a head that stopped at {@code at}, if there is any. */
    Optional<Repaired> repair(List<CommonToken> tokens, int at) {
        if (at == 0) {
            return passOver(tokens, at);
        }
        return putIn(tokens, at, MISSING)
                .or(() -> at > 1 ? putIn(tokens, at - 1, List.of(TreenLexer.HOLE)) : Optional.empty())
                .or(() -> putIn(tokens, at, List.of(TreenLexer.BECAUSE)))
                .or(() -> passOver(tokens, at))
                .or(() -> replace(tokens, at))
                .or(() -> complete(tokens.subList(0, Math.min(at, tokens.size())), at));
    }

    /** The beginning of a head, whatever is missing put in. */
    Optional<Repaired> complete(List<CommonToken> beginning, int at) {
        Kind kind = Kind.CUT_SHORT;
        List<CommonToken> tokens = new ArrayList<>(beginning);
        for (int round = 0; round < MOST_ROUNDS && !tokens.isEmpty(); round++) {
            int end = tokens.size();
            Attempt attempt = parser.read(tokens);
            if (attempt instanceof Attempt.Good(LineContext line)) {
                return Optional.of(new Repaired(line, kind, at, TreenLexer.HOLE));
            }
            OptionalInt next = OptionalInt.empty();
            for (int type : MISSING) {
                if (!fits(tokens, end, type)) {
                    continue;
                }
                List<CommonToken> longer = with(tokens, end, type);
                switch (parser.read(longer)) {
                    case Attempt.Good(LineContext line) -> {
                        return Optional.of(new Repaired(line, kind, at, TreenLexer.HOLE));
                    }
                    case Attempt.Stopped(int place) -> {
                        if (place > end && next.isEmpty()) {
                            next = OptionalInt.of(type);
                        }
                    }
                }
            }
            if (next.isEmpty()) {
                return Optional.empty();
            }
            tokens.add(made(tokens, end, next.getAsInt()));
        }
        return Optional.empty();
    }

    /** The types of token that could have stood at {@code at}; {@link Token#EOF} for the end of the line. */
    Set<Integer> expected(List<CommonToken> tokens, int at) {
        List<CommonToken> before = tokens.subList(0, Math.min(at, tokens.size()));
        Set<Integer> found = new LinkedHashSet<>();
        for (int type : Expected.ASKED) {
            if (fits(before, before.size(), type) && switch (parser.readQuickly(with(before, before.size(), type))) {
                case Attempt.Good _ -> true;
                case Attempt.Stopped(int place) -> place > before.size();
            }) {
                found.add(type);
            }
        }
        if (!before.isEmpty() && parser.read(before) instanceof Attempt.Good) {
            found.add(Token.EOF);
        }
        return found;
    }

    /** Whether a token of that type would mean there what its name says. */
    private static boolean fits(List<CommonToken> tokens, int at, int type) {
        return at == 0
                || switch (type) {
                    // Two figures side by side are seldom a slope without its colon.
                    case TreenLexer.COLON -> tokens.get(at - 1).getType() != TreenLexer.NUMBER;
                    // Elsewhere these would be words after a value.
                    case TreenLexer.TO, TreenLexer.INTO -> tokens.getFirst().getType() == TreenLexer.JOINT;
                    case TreenLexer.IN -> tokens.getFirst().getType() == TreenLexer.REPEAT;
                    case TreenLexer.BECAUSE -> tokens.getFirst().getType() == TreenLexer.REQUIRE
                            || tokens.getFirst().getType() == TreenLexer.ACCEPT;
                    default -> true;
                };
    }

    private Optional<Repaired> putIn(List<CommonToken> tokens, int at, List<Integer> types) {
        for (int type : types) {
            if (fits(tokens, at, type)
                    && parser.read(with(tokens, at, type)) instanceof Attempt.Good(LineContext line)) {
                return Optional.of(new Repaired(line, Kind.PUT_IN, at, type));
            }
        }
        return Optional.empty();
    }

    private Optional<Repaired> passOver(List<CommonToken> tokens, int at) {
        if (at >= tokens.size() || tokens.size() == 1) {
            return Optional.empty();
        }
        List<CommonToken> shorter = new ArrayList<>(tokens);
        shorter.remove(at);
        return parser.read(shorter) instanceof Attempt.Good(LineContext line)
                ? Optional.of(new Repaired(line, Kind.PASSED_OVER, at, TreenLexer.HOLE))
                : Optional.empty();
    }

    private Optional<Repaired> replace(List<CommonToken> tokens, int at) {
        if (at >= tokens.size()) {
            return Optional.empty();
        }
        List<CommonToken> changed = new ArrayList<>(tokens);
        changed.set(at, made(tokens, at, TreenLexer.HOLE));
        return parser.read(changed) instanceof Attempt.Good(LineContext line)
                ? Optional.of(new Repaired(line, Kind.PASSED_OVER, at, TreenLexer.HOLE))
                : Optional.empty();
    }

    private static List<CommonToken> with(List<CommonToken> tokens, int at, int type) {
        List<CommonToken> longer = new ArrayList<>(tokens.size() + 1);
        longer.addAll(tokens);
        longer.add(at, made(tokens, at, type));
        return longer;
    }

    /** A token without text, right behind the token before it. */
    private static CommonToken made(List<CommonToken> tokens, int at, int type) {
        int place = at > 0
                ? tokens.get(at - 1).getStopIndex() + 1
                : tokens.isEmpty() ? 0 : tokens.getFirst().getStartIndex();
        CommonToken token = new CommonToken(type, "");
        token.setStartIndex(place);
        token.setStopIndex(place - 1);
        return token;
    }
}

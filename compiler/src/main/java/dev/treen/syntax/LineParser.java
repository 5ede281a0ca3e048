package dev.treen.syntax;

import dev.treen.grammar.TreenParser;
import dev.treen.grammar.TreenParser.LineContext;
import java.util.List;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/** Gives the tokens of one head to the generated parser. One instance serves a whole file. */
final class LineParser {
    private final TreenParser parser = new TreenParser(new SliceStream(List.of()));

    LineParser() {
        parser.removeErrorListeners();
        parser.setErrorHandler(new StopAtFirst());
    }

    /** What came of a head. */
    sealed interface Attempt {
        /** It reads. */
        record Good(LineContext line) implements Attempt {}

        /** It does not, and the token at this index is the first that cannot stand there. */
        record Stopped(int at) implements Attempt {}
    }

    /** Reads a head, quickly if the quick way suffices. */
    Attempt read(List<CommonToken> tokens) {
        Attempt quick = read(tokens, PredictionMode.SLL);
        return quick instanceof Attempt.Stopped ? read(tokens, PredictionMode.LL) : quick;
    }

    /** Reads a head the quick way only: enough to ask what could stand where. */
    Attempt readQuickly(List<CommonToken> tokens) {
        return read(tokens, PredictionMode.SLL);
    }

    private Attempt read(List<CommonToken> tokens, PredictionMode mode) {
        parser.getInterpreter().setPredictionMode(mode);
        parser.setTokenStream(new SliceStream(tokens));
        try {
            return new Attempt.Good(parser.line());
        } catch (ParseCancellationException stop) {
            return new Attempt.Stopped(placeOf(stop));
        }
    }

    private int placeOf(ParseCancellationException stop) {
        Token token = stop.getCause() instanceof RecognitionException cause && cause.getOffendingToken() != null
                ? cause.getOffendingToken()
                : parser.getCurrentToken();
        return Math.max(0, token.getTokenIndex());
    }

    /** Gives up at the first token that cannot stand where it is. */
    private static final class StopAtFirst extends BailErrorStrategy {
        @Override
        public void recover(Parser recognizer, RecognitionException e) {
            throw new ParseCancellationException(e);
        }
    }
}

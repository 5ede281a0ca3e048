package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.grammar.TreenParser;
import dev.treen.grammar.TreenParserBaseVisitor;
import dev.treen.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.RuleContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The grammar's rule for a whole file and the driver, which finds blocks by itself, read every sample alike. */
class WholeGrammarTest {
    static List<String> samples() {
        return Samples.ALL;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void grammarAndDriverAgree(String name) {
        SourceFile file = Samples.file(name);
        TreenParser parser = new TreenParser(new SliceStream(TokenReader.scan(file, new FindingList()).read()));
        parser.setErrorHandler(new BailErrorStrategy());
        List<String> byGrammar = new ArrayList<>();
        new HeadCollector(byGrammar).visit(parser.file());
        List<String> byDriver = new ArrayList<>();
        collect(Parser.parse(file).statements(), 0, byDriver);
        assertThat(byGrammar).isEqualTo(byDriver);
    }

    private static void collect(List<Statement> statements, int depth, List<String> into) {
        for (Statement statement : statements) {
            into.add(depth + " " + statement.span().start() + " " + statement.getClass().getSimpleName());
            statement.body().ifPresent(b -> collect(b.statements(), depth + 1, into));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(b -> collect(b.statements(), depth + 1, into));
            }
        }
    }

    private static final class HeadCollector extends TreenParserBaseVisitor<Void> {
        private final List<String> heads;

        HeadCollector(List<String> heads) {
            this.heads = heads;
        }

        @Override
        public Void visitChildren(org.antlr.v4.runtime.tree.RuleNode node) {
            if (node instanceof TreenParser.HeadContext head) {
                int depth = 0;
                for (RuleContext up = head.parent; up != null; up = up.parent) {
                    depth += up instanceof TreenParser.BlockContext ? 1 : 0;
                }
                heads.add(depth + " " + head.getStart().getStartIndex() + " "
                        + head.getClass().getSimpleName().replace("HeadContext", ""));
            }
            return super.visitChildren(node);
        }
    }
}

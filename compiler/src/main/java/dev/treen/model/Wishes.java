package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what a project says of its things beside their sizes: accepted findings, runs of the grain. */
final class Wishes {
    private final Session session;
    private final Expressions expressions;

    Wishes(Session session, Expressions expressions) {
        this.session = session;
        this.expressions = expressions;
    }

    Acceptance acceptance(Sequence.ToAccept pending) {
        Statement.Accept accept = pending.statement();
        return new Acceptance(
                accept.code().text(),
                accept.code().span(),
                accept.on().stream().map(on -> nameOf(on, pending.scope())).toList(),
                accept.because().map(Expr.Text::value),
                accept.span());
    }

    /** The dotted name of what is named; the text as it stands where that is the name of a joint. */
    private String nameOf(Expr on, Scope scope) {
        return expressions.entry(on, scope)
                .flatMap(entry -> switch (entry) {
                    case PartEntry part -> Optional.of(part.path());
                    case BoardEntry board -> Optional.of(board.path());
                    case InstanceEntry instance -> Optional.of(instance.path());
                    case Scope.Array array -> Optional.of(array.path());
                    case Scope.Constant c -> Optional.<String>empty();
                    case Scope.Parameter p -> Optional.<String>empty();
                    case Scope.Other o -> Optional.<String>empty();
                    case PatternEntry p -> Optional.<String>empty();
                    case Scope.Preset p -> Optional.<String>empty();
                })
                .orElseGet(() -> scope.prefix() + on.span().text());
    }

    Optional<GrainRun> run(Sequence.ToRun pending) {
        return session.within(
                pending.scope().instance(), () -> run(pending.statement(), pending.scope()));
    }

    private Optional<GrainRun> run(Statement.Property statement, Scope scope) {
        List<String> parts = new ArrayList<>();
        List<Span> named = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        for (Value value : statement.values()) {
            if (value.expr() instanceof Expr.Missing) {
                continue;
            }
            Derived thing = expressions.evaluate(value.expr(), scope);
            if (thing.value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                    && kind == Datum.Thing.Kind.PART) {
                if (!known.add(path)) {
                    session.add(Finding.of(
                            ModelFindings.GIVEN_TWICE, value.expr().span(), "`" + path + "` is twice in one run")
                            .about(path)
                            .build());
                    continue;
                }
                parts.add(path);
                named.add(value.expr().span());
            } else if (!(thing.value() instanceof Datum.Unknown)) {
                session.add(Finding.of(ModelFindings.WRONG_KIND, value.expr().span(), "`run` wants names of parts")
                        .found("`" + Reader.cut(value.expr().span().text()) + "` is "
                                + Arithmetic.phrase(thing.value()) + ".")
                        .build());
            }
        }
        return parts.size() < 2 ? Optional.empty() : Optional.of(new GrainRun(parts, named, statement.span()));
    }
}

package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Optional;

/** A thing made by a pattern. Its inside is declared when something of it is first asked for. */
final class InstanceEntry implements Scope.Entry {
    private final String path;
    private final Span nameAt;
    private final Statement.Property statement;
    private final PatternEntry pattern;
    private final Scope use;
    private final Overrules overrules;
    private final Properties given;
    private final Sequence sequence;
    private final Instances maker;
    private final Scope inside;
    private boolean declared;

    InstanceEntry(
            String path,
            Span nameAt,
            Statement.Property statement,
            PatternEntry pattern,
            Scope use,
            Overrules overrules,
            Properties given,
            Sequence sequence,
            Instances maker) {
        this.path = path;
        this.nameAt = nameAt;
        this.statement = statement;
        this.pattern = pattern;
        this.use = use;
        this.overrules = overrules;
        this.given = given;
        this.sequence = sequence;
        this.maker = maker;
        this.inside = Scope.inside(this);
    }

    String path() {
        return path;
    }

    @Override
    public Span nameAt() {
        return nameAt;
    }

    Statement.Property statement() {
        return statement;
    }

    PatternEntry pattern() {
        return pattern;
    }

    /** The scope in which it is used. */
    Scope use() {
        return use;
    }

    Overrules overrules() {
        return overrules;
    }

    /** What its block says; the defaults of its parts are among it, those of what it stands in behind them. */
    Properties given() {
        return given;
    }

    Sequence sequence() {
        return sequence;
    }

    /** The instance of whose inside it is part. */
    Optional<InstanceEntry> outer() {
        return use.instance();
    }

    int depth() {
        return 1 + outer().map(InstanceEntry::depth).orElse(0);
    }

    /** The names inside, declared. */
    Scope inside() {
        if (!declared) {
            declared = true;
            maker.declare(this);
        }
        return inside;
    }

    /** The scope inside while it is being declared. */
    Scope declaring() {
        return inside;
    }

    /**
     * The finding as it is said to whoever uses the pattern: at the use, with the place inside beside it. Nobody mends the
     * text of a pattern for one use of it, so edits of that text go.
     */
    Finding atUse(Finding finding) {
        Finding said = pattern.holds(finding.at()) ? moved(finding) : finding;
        return outer().map(outer -> outer.atUse(said)).orElse(said);
    }

    private Finding moved(Finding finding) {
        Finding.Builder moved = Finding.of(finding.kind(), nameAt, finding.headline())
                .severity(finding.severity())
                .label(finding.label())
                .found(finding.found())
                .because(finding.because())
                .related(finding.at(), "here, in the pattern `" + pattern.name() + "`");
        finding.related().stream()
                .filter(each -> !pattern.holds(each.at()))
                .forEach(each -> moved.related(each.at(), each.label()));
        for (Remedy remedy : finding.remedies()) {
            List<Edit> outside = remedy.edits().stream()
                    .filter(edit -> !pattern.holds(edit.at()))
                    .toList();
            moved.remedy(outside.size() == remedy.edits().size()
                    ? remedy
                    : new Remedy(remedy.text(), Remedy.Grade.CHOICE, List.of()));
        }
        finding.subjects().forEach(moved::about);
        finding.numbers().forEach(moved::number);
        return moved.build();
    }
}

package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Name;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What an instance changes of single things inside: {@code part lid { from maple }}, {@code joint base_groove { gap 1 }},
 * or, for an instance inside, its name with a block.
 */
final class Overrules {
    static final Overrules NONE = new Overrules(List.of());

    /** A statement with the scope in which it is written. */
    record Over<T extends Statement>(T statement, Scope scope) {}

    private final List<Over<Statement>> statements;
    private final Set<Statement> met = Collections.newSetFromMap(new IdentityHashMap<>());

    private Overrules(List<Over<Statement>> statements) {
        this.statements = List.copyOf(statements);
    }

    /** Those of {@code all} that are no settings, where {@code known} are the words that are parameters. */
    static Overrules in(List<Over<Statement>> all, BlockSchema known) {
        List<Over<Statement>> found = all.stream()
                .filter(over -> isOverrule(over.statement(), known))
                .toList();
        return found.isEmpty() ? NONE : new Overrules(found);
    }

    /** The statements of {@code block}, written in {@code scope}. */
    static List<Over<Statement>> written(Block block, Scope scope) {
        return block.statements().stream().map(s -> new Over<>(s, scope)).toList();
    }

    static boolean isOverrule(Statement statement, BlockSchema known) {
        return switch (statement) {
            case Statement.Part part -> true;
            case Statement.Joint joint -> joint.pairs().isEmpty();
            case Statement.Property property -> property.body().isPresent()
                    && property.values().isEmpty()
                    && known.property(property.name().text()).isEmpty();
            default -> false;
        };
    }

    /** The blocks about the part {@code name}; those without a number are about all of that name. */
    List<Over<Statement.Part>> part(String name) {
        List<Over<Statement.Part>> found = new ArrayList<>();
        for (Over<Statement> over : statements) {
            if (over.statement() instanceof Statement.Part part && part.name().text().equals(name)) {
                found.add(new Over<>(part, over.scope()));
                met.add(part);
            }
        }
        return found;
    }

    /** The block about the joint called {@code alias}. */
    Optional<Over<Statement.Joint>> joint(String alias) {
        for (Over<Statement> over : statements) {
            if (over.statement() instanceof Statement.Joint joint && joint.kind().text().equals(alias)) {
                met.add(joint);
                return Optional.of(new Over<>(joint, over.scope()));
            }
        }
        return Optional.empty();
    }

    /** The statements of the blocks about the instance {@code name} inside. */
    List<Over<Statement>> instance(String name) {
        List<Over<Statement>> found = new ArrayList<>();
        for (Over<Statement> over : statements) {
            if (over.statement() instanceof Statement.Property property && property.name().text().equals(name)) {
                met.add(property);
                property.body().ifPresent(body -> found.addAll(written(body, over.scope())));
            }
        }
        return found;
    }

    /** Says which of them found nothing, when everything inside has been declared. */
    void reportUnmet(Session session, InstanceEntry instance, Collection<String> joints) {
        for (Over<Statement> over : statements) {
            if (!met.contains(over.statement())) {
                switch (over.statement()) {
                    case Statement.Part part -> unmet(session, instance, part.name(), "part", inside(instance, true));
                    case Statement.Joint joint -> unmet(session, instance, joint.kind(), "joint", joints);
                    case Statement.Property property -> unmetProperty(session, instance, property);
                    default -> {
                    }
                }
            }
        }
    }

    private static List<String> inside(InstanceEntry instance, boolean parts) {
        return instance.inside().entries().entrySet().stream()
                .filter(e -> switch (e.getValue()) {
                    case PartEntry part -> parts;
                    case Scope.Array array -> array.elements().values().stream()
                            .anyMatch(each -> each instanceof PartEntry == parts);
                    case InstanceEntry inner -> !parts;
                    default -> false;
                })
                .map(java.util.Map.Entry::getKey)
                .toList();
    }

    private static void unmet(
            Session session, InstanceEntry instance, Name name, String what, Collection<String> known) {
        if (name.text().isEmpty()) {
            return;
        }
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_NAME,
                name.span(),
                "There is no " + what + " `" + name.text() + "` in `" + instance.path() + "`")
                .found(known.isEmpty() ? "" : "There are " + NearWords.quoted(List.copyOf(known)) + ".")
                .related(instance.pattern().nameAt(), "its pattern");
        offer(finding, name, known);
        session.add(finding.build());
    }

    private static void unmetProperty(Session session, InstanceEntry instance, Statement.Property property) {
        List<String> known = new ArrayList<>(
                instance.pattern().schema().properties().stream().map(PropertySchema::name).toList());
        Span nameAt = property.name().span();
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_PROPERTY,
                nameAt,
                "The pattern `" + instance.pattern().name() + "` has no parameter `" + property.name().text() + "`")
                .found("It may hold " + NearWords.quoted(known) + ".")
                .related(instance.pattern().nameAt(), "its pattern");
        known.addAll(inside(instance, false));
        offer(finding, property.name(), known);
        session.add(finding.build());
    }

    private static void offer(Finding.Builder finding, Name name, Collection<String> known) {
        NearWords.remedies(name.text(), name.span(), known).forEach(finding::remedy);
    }
}

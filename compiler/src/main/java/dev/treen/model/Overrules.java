package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.source.Span;
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

    private final List<Statement> statements;
    private final Set<Statement> met = Collections.newSetFromMap(new IdentityHashMap<>());

    private Overrules(List<Statement> statements) {
        this.statements = List.copyOf(statements);
    }

    /** Those in {@code block}, where {@code known} are the words that are parameters. */
    static Overrules in(List<Statement> block, BlockSchema known) {
        List<Statement> found = new ArrayList<>();
        for (Statement statement : block) {
            if (isOverrule(statement, known)) {
                found.add(statement);
            }
        }
        return found.isEmpty() ? NONE : new Overrules(found);
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
    List<Statement.Part> part(String name) {
        List<Statement.Part> found = new ArrayList<>();
        for (Statement statement : statements) {
            if (statement instanceof Statement.Part part && part.name().text().equals(name)) {
                found.add(part);
                met.add(part);
            }
        }
        return found;
    }

    /** The block about the joint called {@code alias}. */
    Optional<Statement.Joint> joint(String alias) {
        for (Statement statement : statements) {
            if (statement instanceof Statement.Joint joint && joint.kind().text().equals(alias)) {
                met.add(joint);
                return Optional.of(joint);
            }
        }
        return Optional.empty();
    }

    /** The statements of the blocks about the instance {@code name} inside. */
    List<Statement> instance(String name) {
        List<Statement> found = new ArrayList<>();
        for (Statement statement : statements) {
            if (statement instanceof Statement.Property property && property.name().text().equals(name)) {
                met.add(property);
                property.body().ifPresent(body -> found.addAll(body.statements()));
            }
        }
        return found;
    }

    /** Says which of them found nothing, when everything inside has been declared. */
    void reportUnmet(Session session, InstanceEntry instance, Collection<String> joints) {
        for (Statement statement : statements) {
            if (!met.contains(statement)) {
                switch (statement) {
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
        List<String> near = NearWords.of(name.text(), known);
        near.forEach(each -> finding.remedy(
                near.size() == 1
                        ? Remedy.safe("write `" + each + "`", new Edit(name.span(), each))
                        : Remedy.choice("write `" + each + "`", new Edit(name.span(), each))));
    }
}

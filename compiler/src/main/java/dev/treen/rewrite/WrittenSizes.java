package dev.treen.rewrite;

import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Project;
import dev.treen.quantity.Exact;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** All that a project says, without where and how it says it: two texts with the same are the same project. */
final class WrittenSizes {
    private final List<String> said = new ArrayList<>();

    List<String> of(Project project) {
        for (Object part : List.of(project.settings(), project.boards(), project.parts(), project.joints(),
                project.runs(), project.holdings(), project.measurements())) {
            add(part);
        }
        return said;
    }

    /** The same of some of its records. */
    List<String> ofAll(List<?> values) {
        values.forEach(this::add);
        return said;
    }

    private void add(Object value) {
        switch (value) {
            case Span _,Derivation _,SourceFile _,LengthFormat _,Unit _ -> {
                // Where and how it is written, and in what unit.
            }
            case Datum.Bare(BigFraction amount, Unit _) -> add(amount);
            case BigFraction number -> said.add(Exact.canonical(number).toString());
            case Optional<?> maybe -> maybe.ifPresent(this::add);
            case List<?> list -> {
                List<?> told = list.stream().filter(each -> !(each instanceof Span)).toList();
                said.add("[" + told.size());
                told.forEach(this::add);
            }
            case Map<?, ?> map -> new TreeMap<>(map).forEach((key, each) -> {
                said.add(String.valueOf(key));
                add(each);
            });
            case Record made -> components(made);
            default -> said.add(value.toString());
        }
    }

    private void components(Record made) {
        for (RecordComponent component : made.getClass().getRecordComponents()) {
            try {
                component.getAccessor().setAccessible(true);
                Object value = component.getAccessor().invoke(made);
                if (value != null) {
                    add(value);
                }
            } catch (ReflectiveOperationException hidden) {
                throw new IllegalStateException("a record hides what it holds: " + made.getClass(), hidden);
            }
        }
    }
}

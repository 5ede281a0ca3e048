package dev.treen.lsp.feature;

import dev.treen.check.RoomYear;
import dev.treen.joinery.Figure;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.MadeJoint;
import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Setting;
import dev.treen.plan.YearText;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * What Treen worked out, shown in the line: finished sizes of parts, what patterns make over all, values left to it,
 * what sums and names come to, units of bare numbers.
 */
public final class InlayHints {
    private static final Pattern FIGURE = Pattern.compile("-?\\d[\\d./]*");

    private final HintSettings wanted;

    /** Makes hints of the kinds that are wanted. */
    public InlayHints(HintSettings wanted) {
        this.wanted = wanted;
    }

    /** The same hint with what resting on its place shows, if that is still the text that the hint was made of. */
    public static InlayHint resolved(InlayHint hint, Document document, boolean pictures) {
        Offer.in(hint.getData())
                .filter(offer -> offer.isOf(document))
                .flatMap(offer -> new Hovers(pictures).at(document, offer.at()))
                .ifPresent(hover -> hint.setTooltip(hover.getContents().getRight()));
        return hint;
    }

    /** The address of the file that a hint is of. */
    public static Optional<String> file(InlayHint hint) {
        return Offer.in(hint.getData()).map(Offer::uri);
    }

    /** The hints inside {@code range}. */
    public List<InlayHint> in(Document document, Range range) {
        Positions.Span asked = document.positions().span(range);
        LengthFormat format = document.analysis().evaluation().project().settings().format();
        List<InlayHint> hints = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        for (FinishedPart part : wanted.sizes() ? document.analysis().joined().parts() : List.<FinishedPart>of()) {
            add(document, asked, part.part().nameAt(), finished(part, format), hints, taken);
        }
        if (wanted.sizes()) {
            addInstances(document, asked, format, hints, taken);
        }
        for (MadeJoint joint : wanted.values() ? document.analysis().joined().joints() : List.<MadeJoint>of()) {
            for (Figure figure : joint.figures()) {
                Setting setting = joint.joint().settings().get(figure.name());
                if (setting != null && setting.auto()) {
                    String text = "= " + format.text(figure.measure().value());
                    add(document, asked, setting.valueAt(), text, hints, taken);
                }
            }
        }
        addNumbers(document, asked, hints, taken);
        Set<Integer> told = new HashSet<>();
        for (RoomYear year : document.analysis().quick().facts().years(
                at -> wanted.seasons() && isIn(document, asked, at))) {
            // Behind the unit, or what a value comes to: a second hint in the same place.
            // Editors set two hints at one place close together.
            String before = taken.contains(year.writtenAt().end()) ? "; " : "";
            add(document, asked, year.writtenAt(), before + YearText.hint(year, format), hints, told);
        }
        return hints;
    }

    /** Of what a pattern makes one line behind its name: how many parts, and over all. Their sizes are in the hover. */
    private static void addInstances(
            Document document,
            Positions.Span asked,
            LengthFormat format,
            List<InlayHint> hints,
            Set<Integer> taken) {
        Makers makers = new Makers(document);
        Map<String, List<Part>> made = new LinkedHashMap<>();
        Map<String, Span> places = new HashMap<>();
        for (FinishedPart part : document.analysis().joined().parts()) {
            makers.of(part.part().name())
                    .filter(maker -> isIn(document, asked, maker.usedAt()))
                    .ifPresent(maker -> {
                        places.put(maker.path(), maker.usedAt());
                        made.computeIfAbsent(maker.path(), path -> new ArrayList<>()).add(part.part());
                    });
        }
        // A row of things is written once: where they differ there is no one size to tell.
        Map<Span, Set<String>> texts = new LinkedHashMap<>();
        made.forEach((path, parts) -> texts.computeIfAbsent(places.get(path), at -> new HashSet<>())
                .add(OverAll.text(parts, format)));
        texts.forEach((at, told) -> {
            if (told.size() == 1) {
                add(document, asked, at, told.iterator().next(), hints, taken);
            }
        });
    }

    /** The unit of a number that has none, and what a sum or a name comes to. */
    private void addNumbers(Document document, Positions.Span asked, List<InlayHint> hints, Set<Integer> taken) {
        LengthFormat format = document.analysis().evaluation().project().settings().format();
        Map<Span, Set<Length>> sums = new LinkedHashMap<>();
        for (Measure bare : document.analysis().evaluation().bareNumbers()) {
            if (!isIn(document, asked, bare.at())) {
                continue;
            }
            if (!FIGURE.matcher(bare.at().text()).matches()) {
                sums.computeIfAbsent(bare.at(), at -> new HashSet<>()).add(bare.value());
            } else if (wanted.units()) {
                add(document, asked, bare.at(), format.unit(), hints, taken);
            }
        }
        if (wanted.values()) {
            // What is written once and made several times may come to another value each time: then there is none to
            // tell.
            sums.forEach((at, values) -> {
                if (values.size() == 1) {
                    add(document, asked, at, "= " + format.text(values.iterator().next()), hints, taken);
                }
            });
        }
    }

    private static String finished(FinishedPart part, LengthFormat format) {
        boolean same = part.finished().equals(part.part().seen());
        String size = part.finished().text(format);
        return same ? size : size + " finished";
    }

    private static boolean isIn(Document document, Positions.Span asked, Span at) {
        return at.file().equals(document.file()) && asked.start() <= at.end() && at.end() <= asked.end();
    }

    private static void add(
            Document document,
            Positions.Span asked,
            Span at,
            String text,
            List<InlayHint> hints,
            Set<Integer> taken) {
        if (isIn(document, asked, at) && taken.add(at.end())) {
            InlayHint hint = new InlayHint(document.positions().position(at.end()), Either.forLeft(text));
            hint.setKind(InlayHintKind.Type);
            hint.setPaddingLeft(true);
            hint.setData(Offer.of(document, at.start()).json());
            hints.add(hint);
        }
    }
}

package dev.treen.plan;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.treen.cutting.Areas;
import dev.treen.cutting.Blank;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.cutting.Glued;
import dev.treen.cutting.Moves;
import dev.treen.cutting.Rectangle;
import dev.treen.cutting.Strip;
import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Related;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GlueFaces;
import dev.treen.joinery.Weight;
import dev.treen.joinery.Weights;
import dev.treen.joinery.Work;
import dev.treen.order.BuildOrder;
import dev.treen.order.Calendar;
import dev.treen.order.Minutes;
import dev.treen.order.Operation;
import dev.treen.order.SoFar;
import dev.treen.order.Step;
import dev.treen.order.Wait;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/**
 * The plan as JSON. Lengths are numbers in millimetres, places in files count from 1; the schemas are
 * {@code plan-schema.json} and {@code findings-schema.json} beside this class, and {@code version} goes up whenever a
 * reader would have to change.
 */
public final class PlanJson {
    /** The version of the form. */
    public static final int VERSION = 1;

    private final JsonGenerator json;

    private PlanJson(JsonGenerator json) {
        this.json = json;
    }

    private interface Body {
        void write(PlanJson to) throws IOException;
    }

    private static String written(Body body) {
        StringWriter out = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(out)) {
            // The library's own line ends would be those of the machine.
            generator.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
            generator.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
            body.write(new PlanJson(generator));
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory cannot fail", impossible);
        }
        return out.append('\n').toString();
    }

    /** The whole plan. */
    public static String of(Plan plan) {
        return written(to -> to.plan(plan));
    }

    /** Findings alone, for {@code check --format json}. */
    public static String of(List<Finding> findings) {
        return written(to -> {
            to.json.writeStartObject();
            to.json.writeNumberField("version", VERSION);
            to.findings(findings);
            to.json.writeEndObject();
        });
    }

    private void plan(Plan plan) throws IOException {
        json.writeStartObject();
        json.writeNumberField("version", VERSION);
        json.writeStringField("title", plan.title());
        json.writeStringField("lengths", "mm");
        cutList(CutList.of(plan));
        parts(plan);
        joints(plan);
        layout(plan.cutting());
        CostJson.write(Costs.of(plan), json);
        order(plan.order());
        findings(plan.findings());
        json.writeEndObject();
    }

    private void cutList(CutList list) throws IOException {
        json.writeArrayFieldStart("cutList");
        for (CutList.Row row : list.rows()) {
            json.writeStartObject();
            json.writeStringField("mark", row.mark());
            texts("parts", row.parts());
            size("finished", row.finished());
            size("rough", row.rough());
            json.writeStringField("species", row.species());
            json.writeStringField("board", row.board());
            json.writeBooleanField("toFit", row.toFit());
            json.writeBooleanField("bought", row.bought());
            json.writeStringField("notes", row.notes());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("loosePieces");
        for (CutList.Loose row : list.loose()) {
            json.writeStartObject();
            json.writeStringField("mark", row.mark());
            json.writeStringField("kind", row.piece().kind().word(1));
            json.writeNumberField("count", row.piece().count());
            json.writeBooleanField("round", row.piece().kind().round());
            json.writeBooleanField("bought", row.piece().kind().bought());
            size("finished", row.piece().size());
            json.writeStringField("species", row.species());
            json.writeStringField("board", row.board());
            texts("parts", row.parts());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void parts(Plan plan) throws IOException {
        Weights weights = Weights.of(plan.joined());
        json.writeArrayFieldStart("parts");
        for (Weight weight : weights.parts()) {
            FinishedPart part = weight.part();
            json.writeStartObject();
            json.writeStringField("name", part.part().name());
            size("seen", part.part().seen());
            size("finished", part.finished());
            size("rough", part.rough());
            json.writeNumberField("volume", weight.volume().bigDecimalValue(3, RoundingMode.HALF_UP));
            number("moisture", weight.moisture(), 2);
            if (weight.kilograms().isPresent()) {
                number("mass", weight.kilograms().getAsDouble(), 4);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        mass(weights);
    }

    private void mass(Weights weights) throws IOException {
        json.writeObjectFieldStart("mass");
        number("kilograms", weights.kilograms(), 4);
        json.writeArrayFieldStart("woods");
        for (Weights.OfWood wood : weights.byWood()) {
            json.writeStartObject();
            json.writeStringField("wood", wood.wood());
            json.writeNumberField("parts", wood.parts());
            json.writeNumberField("volume", wood.volume().bigDecimalValue(3, RoundingMode.HALF_UP));
            number("kilograms", wood.kilograms(), 4);
            json.writeEndObject();
        }
        json.writeEndArray();
        texts("unknown", weights.unknown());
        json.writeEndObject();
    }

    private void joints(Plan plan) throws IOException {
        json.writeArrayFieldStart("joints");
        for (GlueFaces faces : GlueFaces.of(plan.joined())) {
            json.writeStartObject();
            json.writeStringField("name", faces.made().joint().name());
            json.writeStringField("kind", faces.made().joint().kind());
            texts("parts", List.of(faces.made().joint().left().name(), faces.made().joint().right().name()));
            json.writeBooleanField("glued", faces.glued());
            json.writeObjectFieldStart("faces");
            number("longGrain", faces.longGrain(), 3);
            number("endGrain", faces.endGrain(), 3);
            number("mixed", faces.mixed(), 3);
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void texts(String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void length(String name, Length length) throws IOException {
        json.writeNumberField(name,
                length.mm().bigDecimalValue(3, RoundingMode.HALF_UP).stripTrailingZeros());
    }

    private void size(String name, Size size) throws IOException {
        json.writeObjectFieldStart(name);
        length("length", size.length());
        length("width", size.width());
        length("thickness", size.thickness());
        json.writeEndObject();
    }

    private void area(Rectangle area) throws IOException {
        length("x", area.x());
        length("y", area.y());
        length("length", area.length());
        length("width", area.width());
    }

    private void layout(Cutting cutting) throws IOException {
        json.writeObjectFieldStart("layout");
        json.writeBooleanField("proved", cutting.proved());
        number("gap", cutting.gap(), 4);
        json.writeStringField("bound", cutting.bound());
        json.writeObjectFieldStart("percent");
        Areas areas = cutting.areas();
        number("finished", areas.yieldPercent(), 1);
        number("allowances", areas.percent(areas.allowances()), 1);
        number("kerf", areas.percent(areas.kerf()), 1);
        number("offcuts", areas.percent(areas.offcuts()), 1);
        number("waste", areas.percent(areas.waste()), 1);
        json.writeEndObject();
        glued(cutting);
        json.writeArrayFieldStart("boards");
        for (BoardCut board : cutting.boards()) {
            board(board);
        }
        json.writeEndArray();
        texts("untouched", cutting.untouched());
        texts("unplaced", cutting.unplaced());
        if (!cutting.remarks().isEmpty()) {
            texts("remarks", cutting.remarks());
        }
        moves(cutting.moves());
        json.writeEndObject();
    }

    private void glued(Cutting cutting) throws IOException {
        if (cutting.glued().isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("glued");
        for (Glued glued : cutting.glued()) {
            json.writeStartObject();
            json.writeStringField("part", glued.part());
            json.writeStringField("rings", glued.asked().order().name().toLowerCase(Locale.ROOT));
            json.writeStringField("match", glued.asked().match().name().toLowerCase(Locale.ROOT));
            lengths("staves", glued.staves());
            lengths("lines", glued.lines());
            texts("hearts", glued.hearts().stream().map(Glued.Heart::word).toList());
            json.writeBooleanField("clear", glued.clear());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void lengths(String name, List<Length> lengths) throws IOException {
        json.writeArrayFieldStart(name);
        for (Length length : lengths) {
            json.writeNumber(length.mm().bigDecimalValue(3, RoundingMode.HALF_UP).stripTrailingZeros());
        }
        json.writeEndArray();
    }

    private void moves(Moves moves) throws IOException {
        if (moves.none()) {
            return;
        }
        json.writeObjectFieldStart("moves");
        json.writeBooleanField("anew", moves.anew());
        number("more", moves.more(), 4);
        json.writeArrayFieldStart("moved");
        for (Moves.Move move : moves.moved()) {
            json.writeStartObject();
            json.writeStringField("part", move.part());
            json.writeStringField("fromBoard", move.fromBoard());
            length("fromX", move.from().x());
            length("fromY", move.from().y());
            json.writeStringField("toBoard", move.toBoard());
            length("toX", move.to().x());
            length("toY", move.to().y());
            json.writeEndObject();
        }
        json.writeEndArray();
        texts("resized", moves.resized());
        texts("added", moves.added());
        texts("gone", moves.gone());
        texts("lost", moves.lost());
        json.writeEndObject();
    }

    private void board(BoardCut board) throws IOException {
        json.writeStartObject();
        json.writeStringField("board", board.board().name());
        if (!board.board().name().equals(board.source().name())) {
            json.writeStringField("ripped", board.source().name());
        }
        json.writeNumberField("leaf", board.leaf());
        json.writeNumberField("leaves", board.leaves());
        length("length", board.board().length().value());
        length("width", board.board().width().value());
        length("thickness", board.thickness());
        json.writeArrayFieldStart("parts");
        for (BoardCut.OnBoard part : board.parts()) {
            json.writeStartObject();
            json.writeStringField("part", part.name());
            blank(part.blank());
            area(part.area());
            if (!part.flaws().isEmpty()) {
                texts("flaws", part.flaws());
            }
            if (!part.flaws().isEmpty() || !part.lay().isEmpty()) {
                json.writeStringField("lay", part.lay());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("strips");
        for (Strip strip : board.strips()) {
            json.writeStartObject();
            json.writeNumberField("number", strip.number());
            texts("parts", strip.parts());
            area(strip.area());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("cuts");
        for (BoardCut.SawCut cut : board.cuts()) {
            json.writeStartObject();
            json.writeNumberField("number", cut.number());
            json.writeStringField("way", cut.along() ? "along" : "across");
            length("at", cut.at());
            length("kerf", cut.kerf());
            if (cut.strip() != BoardCut.SawCut.NO_STRIP) {
                json.writeNumberField("strip", cut.strip());
            }
            json.writeObjectFieldStart("through");
            area(cut.piece());
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("offcuts");
        for (Rectangle offcut : board.offcuts()) {
            json.writeStartObject();
            area(offcut);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void blank(Blank blank) throws IOException {
        if (blank.plain()) {
            return;
        }
        json.writeArrayFieldStart("becomes");
        for (Blank.Member member : blank.members()) {
            json.writeStartObject();
            json.writeStringField("part", member.part());
            if (member.stave() != Blank.Member.WHOLE) {
                json.writeNumberField("stave", member.stave());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void order(BuildOrder order) throws IOException {
        json.writeObjectFieldStart("order");
        json.writeNumberField("settings", order.settings());
        json.writeNumberField("separately", order.separately());
        json.writeNumberField("settingsAtLeast", order.settingsAtLeast());
        json.writeBooleanField("fewest", order.fewest());
        json.writeBooleanField("best", order.best());
        range("minutes", order.minutes().least(), order.minutes().most());
        range("waitingHours", order.waiting().leastHours(), order.waiting().mostHours());
        texts("cautions", order.cautions());
        calendar(order.calendar());
        soFar(order.soFar());
        json.writeArrayFieldStart("steps");
        for (Step step : order.steps()) {
            step(step);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void calendar(Calendar calendar) throws IOException {
        range("days", calendar.days().least(), calendar.days().most());
        json.writeArrayFieldStart("calendar");
        for (Calendar.Row row : calendar.rows()) {
            json.writeStartObject();
            json.writeStringField("stage", row.stage().name().toLowerCase(Locale.ROOT));
            range("minutes", row.handsOn().least(), row.handsOn().most());
            range("beginsOnDay", row.begins().least(), row.begins().most());
            range("endsOnDay", row.ends().least(), row.ends().most());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void soFar(SoFar soFar) throws IOException {
        texts("made", soFar.made());
        texts("done", soFar.done());
        json.writeArrayFieldStart("changes");
        for (SoFar.Change each : soFar.changes()) {
            json.writeStartObject();
            json.writeStringField("name", each.name());
            length("planned", each.planned());
            length("now", each.now());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void step(Step step) throws IOException {
        Operation operation = step.operation();
        json.writeStartObject();
        json.writeNumberField("number", step.number());
        json.writeStringField("phase", operation.phase().name().toLowerCase(Locale.ROOT));
        json.writeStringField("action", operation.action());
        json.writeStringField("stage", operation.phase().stage().name().toLowerCase(Locale.ROOT));
        texts("how", operation.how());
        texts("parts", operation.parts());
        texts("with", operation.with());
        json.writeStringField("tool", operation.tool());
        json.writeArrayFieldStart("settings");
        for (Work.GaugeSetting setting : operation.settings()) {
            json.writeStartObject();
            json.writeStringField("name", setting.name());
            length("value", setting.value());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("from", operation.from());
        json.writeStringField("check", operation.check());
        json.writeStringField("caution", operation.caution());
        if (operation.minutes().isPresent()) {
            Minutes minutes = operation.minutes().get();
            range("minutes", minutes.least(), minutes.most());
        }
        if (operation.pause().isPresent()) {
            Wait wait = operation.pause().get();
            range("waitHours", wait.leastHours(), wait.mostHours());
            json.writeStringField("waitFor", wait.words());
        }
        json.writeStringField("because", step.because());
        json.writeArrayFieldStart("after");
        for (int number : step.after()) {
            json.writeNumber(number);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("needs");
        for (Step.Need need : step.needs()) {
            json.writeStartObject();
            json.writeNumberField("step", need.step());
            json.writeStringField("because", need.because());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void range(String name, int least, int most) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeNumberField("least", least);
        json.writeNumberField("most", most);
        json.writeEndObject();
    }

    private void number(String name, double value, int places) throws IOException {
        json.writeNumberField(name, BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP));
    }

    private void findings(List<Finding> findings) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("code", finding.code());
            json.writeStringField("severity", finding.severity().word());
            json.writeStringField("headline", finding.headline());
            place(finding.at());
            json.writeStringField("label", finding.label());
            json.writeStringField("found", finding.found());
            json.writeStringField("because", finding.because());
            json.writeArrayFieldStart("related");
            for (Related related : finding.related()) {
                json.writeStartObject();
                place(related.at());
                json.writeStringField("label", related.label());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("remedies");
            for (Remedy remedy : finding.remedies()) {
                remedy(remedy);
            }
            json.writeEndArray();
            texts("about", finding.subjects());
            json.writeObjectFieldStart("numbers");
            for (var number : new TreeMap<>(finding.numbers()).entrySet()) {
                number(number.getKey(), number.getValue(), 4);
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void remedy(Remedy remedy) throws IOException {
        json.writeStartObject();
        json.writeStringField("text", remedy.text());
        json.writeBooleanField("safe", remedy.grade() == Remedy.Grade.SAFE);
        json.writeArrayFieldStart("edits");
        for (Edit edit : remedy.edits()) {
            json.writeStartObject();
            place(edit.at());
            json.writeStringField("write", edit.text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void place(Span at) throws IOException {
        json.writeStringField("file", at.file().name());
        json.writeNumberField("line", at.line());
        json.writeNumberField("column", at.column());
        json.writeNumberField("start", at.start());
        json.writeNumberField("end", at.end());
    }
}

package dev.treen.plan;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Related;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Work;
import dev.treen.order.Step;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.TreeMap;

/**
 * The plan as JSON. Lengths are numbers in millimetres, places count from 1; {@code version} goes up whenever a reader
 * would have to change.
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
            generator.useDefaultPrettyPrinter();
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
        json.writeArrayFieldStart("parts");
        for (FinishedPart part : plan.joined().parts()) {
            json.writeStartObject();
            json.writeStringField("name", part.part().name());
            size("seen", part.part().seen());
            size("finished", part.finished());
            size("rough", part.rough());
            part.part().from().ifPresent(b -> text("board", b.name()));
            json.writeEndObject();
        }
        json.writeEndArray();
        boards(plan);
        steps(plan);
        findings(plan.findings());
        json.writeEndObject();
    }

    private void text(String name, String value) {
        try {
            json.writeStringField(name, value);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory cannot fail", impossible);
        }
    }

    private void length(String name, Length length) throws IOException {
        json.writeNumberField(name,
                length.mm().bigDecimalValue(3, java.math.RoundingMode.HALF_UP).stripTrailingZeros());
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

    private void boards(Plan plan) throws IOException {
        json.writeObjectFieldStart("layout");
        json.writeBooleanField("proved", plan.cutting().proved());
        json.writeNumberField("gap", Math.round(plan.cutting().gap() * 1e4) / 1e4);
        json.writeNumberField("yieldPercent", Math.round(plan.cutting().yieldPercent() * 10) / 10.0);
        json.writeArrayFieldStart("boards");
        for (BoardCut board : plan.cutting().boards()) {
            json.writeStartObject();
            json.writeStringField("board", board.board().name());
            json.writeNumberField("leaf", board.leaf());
            json.writeNumberField("leaves", board.leaves());
            length("thickness", board.thickness());
            json.writeArrayFieldStart("parts");
            for (BoardCut.OnBoard part : board.parts()) {
                json.writeStartObject();
                json.writeStringField("part", part.part());
                area(part.area());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("cuts");
            for (BoardCut.SawCut cut : board.cuts()) {
                json.writeStartObject();
                json.writeNumberField("number", cut.number());
                json.writeStringField("way", cut.along() ? "along" : "across");
                length("at", cut.at());
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
        json.writeEndArray();
        json.writeArrayFieldStart("unplaced");
        for (String part : plan.cutting().unplaced()) {
            json.writeString(part);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void steps(Plan plan) throws IOException {
        json.writeArrayFieldStart("steps");
        for (Step step : plan.order().steps()) {
            json.writeStartObject();
            json.writeNumberField("number", step.number());
            json.writeStringField("action", step.action());
            json.writeArrayFieldStart("parts");
            for (String part : step.parts()) {
                json.writeString(part);
            }
            json.writeEndArray();
            json.writeStringField("tool", step.tool());
            json.writeArrayFieldStart("settings");
            for (Work.GaugeSetting setting : step.settings()) {
                json.writeStartObject();
                json.writeStringField("name", setting.name());
                length("value", setting.value());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeStringField("check", step.check());
            json.writeStringField("caution", step.caution());
            json.writeStringField("because", step.because());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void findings(List<Finding> findings) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("code", finding.code());
            json.writeStringField("severity", finding.severity().word());
            json.writeStringField("headline", finding.headline());
            place(finding.at());
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
            json.writeObjectFieldStart("numbers");
            for (var number : new TreeMap<>(finding.numbers()).entrySet()) {
                json.writeNumberField(number.getKey(), Math.round(number.getValue() * 1e4) / 1e4);
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

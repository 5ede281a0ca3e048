package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Joinery;
import dev.treen.joinery.JointKinds;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.quantity.Length;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Takes a project's text through all layers up to the checks. The projects are invented. */
public record Bench(String text, Checked checked) {

    /** Checks a text. */
    public static Bench of(String text) {
        SourceFile file = new SourceFile("kitchen.treen", text);
        var project = Evaluator.evaluate(Parser.parse(file), FileLoader.NONE, JointKinds.schemas()).project();
        return new Bench(text, Checks.check(Joinery.join(project)));
    }

    /** The project with its joints made. */
    public Joined joined() {
        return checked.joined();
    }

    /** The finished part of a name. */
    public FinishedPart part(String name) {
        return joined().part(name).orElseThrow();
    }

    /** The first joint between two parts. */
    public MadeJoint joint(String left, String right) {
        return joined().joints().stream()
                .filter(m -> m.joint().left().name().equals(left) && m.joint().right().name().equals(right))
                .findFirst()
                .orElseThrow();
    }

    /** A figure of a joint. */
    public Length figure(String left, String right, String name) {
        return joint(left, right).figure(name).orElseThrow().measure().value();
    }

    /** The codes of all findings, in order. */
    public List<String> codes() {
        return checked.findings().stream().map(Finding::code).toList();
    }

    /** The first finding of a code. */
    public Finding finding(String code) {
        return checked.findings().stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + code + " in " + checked.findings()));
    }

    /** The project with one text in the place of another. */
    public Bench with(String old, String changed) {
        if (!text.contains(old)) {
            throw new IllegalArgumentException("the text has no " + old);
        }
        return of(text.replace(old, changed));
    }

    /** The project with the safe remedy of a finding applied. */
    public Bench mended(String code) {
        return applied(finding(code).safeRemedy().orElseThrow());
    }

    /** The project with a remedy applied. */
    public Bench applied(Remedy remedy) {
        return of(Edit.applied(text, remedy.edits()));
    }

    /** Millimetres, in hundredths where needed. */
    public static Length mm(double value) {
        return Length.ofMm(BigFraction.of((int) Math.round(value * 1000), 1000));
    }

    /** A tea caddy of cherry with mitred walls and a base in grooves: our own sample, invented. */
    public static Bench caddy() {
        return of("""
                project "Tea caddy" {
                  units    mm
                  climate  { humidity 35%..65%; temperature 18degC..24degC }
                  tools    hand
                }
                board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9% }
                let wall   = 9
                let inside = 160 x 80 x 70
                part front {
                  length inside.length; width 84; thickness wall; from plank
                  place { length right; width up; at 0, -wall, 0 }
                }
                part back like front { place { at 0, inside.width, 0 } }
                part left {
                  length inside.width; width 84; thickness wall; from plank
                  place { length back; width up; at -wall, 0, 0 }
                }
                part right like left { place { at inside.length, 0, 0 } }
                part base {
                  length inside.length; width inside.width; thickness 7; from plank
                  place { length right; width back; at 0, 0, 5 }
                }
                joint mitre front to left, left to back, back to right, right to front
                joint groove base into front, back, left, right { wide 5; deep 4; gap auto }
                """);
    }

    /** A wall shelf of oak in inches, with stopped housings: our own sample, invented. */
    public static Bench shelf() {
        return of("""
                project "Wall shelf" {
                  units in; climate { humidity 30%..60%; temperature 65degF..75degF }; tools machine
                }
                board oak { species white_oak; size 72 x 6 3/4 x 7/8; rings rift; moisture 8% }
                part side_left {
                  length 24; width 6; thickness 3/4; from oak
                  place { length up; width back; at -3/4, 0, 0 }
                }
                part side_right like side_left { place { at 30, 0, 0 } }
                part shelf {
                  length 30; width 6; thickness 5/8; from oak
                  place { length right; width back; at 0, 0, 4 }
                }
                joint housing shelf into side_left, side_right { deep auto; stop 3/8 from front }
                """);
    }
}

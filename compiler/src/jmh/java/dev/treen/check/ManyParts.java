package dev.treen.check;

import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.model.Project;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;

/** Projects of as many parts as a measurement wants: boxes side by side, or a carcase of shelves. All are made up. */
final class ManyParts {
    private ManyParts() {
    }

    static Project project(String text) {
        SourceFile file = new SourceFile("many.treen", """
                project "Many parts" { climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 9000 x 400 x 27; rings flat; moisture 9% }
                """ + text);
        return Evaluator.evaluate(Parser.parse(file), FileLoader.NONE, JointKinds.schemas()).project();
    }

    static String boxes(int boxes) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < boxes; i++) {
            text.append("""
                    part front%1$d { length 160; width 84; thickness 9; from plank; place { length right; width up; at %2$d, -9, 0 } }
                    part back%1$d like front%1$d { place { at %2$d, 80, 0 } }
                    part left%1$d { length 80; width 84; thickness 9; from plank; place { length back; width up; at %2$d - 9, 0, 0 } }
                    part right%1$d like left%1$d { place { at %2$d + 160, 0, 0 } }
                    part base%1$d { length 160; width 80; thickness 7; from plank; place { length right; width back; at %2$d, 0, 5 } }
                    joint mitre front%1$d to left%1$d, left%1$d to back%1$d, back%1$d to right%1$d, right%1$d to front%1$d
                    joint groove base%1$d into front%1$d, back%1$d, left%1$d, right%1$d { wide 5; deep 4; gap auto }
                    """.formatted(i, 200 * i));
        }
        return text.toString();
    }

    static String carcase(int shelves) {
        StringBuilder text = new StringBuilder("""
                part left  { length %1$d; width 200; thickness 18; from plank; place { length up; width back; at -18, 0, 0 } }
                part right like left { place { at 600, 0, 0 } }
                """.formatted(60 * shelves + 60));
        for (int i = 0; i < shelves; i++) {
            text.append("""
                    part shelf%1$d { length 600; width 200; thickness 16; from plank; place { length right; width back; at 0, 0, %2$d } }
                    joint housing shelf%1$d into left, right { deep 5 }
                    """.formatted(i, 60 * i + 30));
        }
        return text.toString();
    }
}

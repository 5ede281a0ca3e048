package dev.treen.joinery;

import java.util.ArrayList;
import java.util.List;

/** The work of mortises and tenons: mortises first, tenons to fit (rules of the trade J-10). */
final class TenonWorks {
    private TenonWorks() {
    }

    static List<Work> of(List<MadeJoint> statement) {
        List<String> rails = Fastening.named(statement, true);
        List<String> stiles = Fastening.named(statement, false);
        boolean loose = has(statement, LooseTenon.PIECE);
        // A stub without shoulders stands in a groove that is there already.
        boolean inGroove = !loose && Work.figure(statement, "shoulder").isZero()
                && statement.getFirst().joint().word("kind").filter("stub"::equals).isPresent();
        List<Work> works = new ArrayList<>();
        if (!inGroove) {
            works.addAll(loose ? loose(statement) : List.of(mortise(statement, stiles)));
        }
        if (has(statement, "flare")) {
            works.add(TenonWedges.works(statement).get(0));
        }
        boolean peg = has(statement, "peg");
        if (!loose) {
            if (peg) {
                works.add(TenonPeg.works(statement).get(0));
            }
            works.add(tenon(statement, rails, stiles));
            if (peg) {
                works.add(TenonPeg.works(statement).get(1));
            }
        } else if (peg) {
            works.addAll(TenonPeg.works(statement).subList(0, 2));
        }
        if (has(statement, "flare")) {
            works.add(TenonWedges.works(statement).get(1));
        }
        if (peg) {
            works.add(LoosePiece.making(statement, LoosePiece.Kind.PEG));
        }
        if (has(statement, "flare")) {
            works.add(LoosePiece.making(statement, LoosePiece.Kind.WEDGE));
        }
        works.add(glue(statement));
        if (peg) {
            works.add(TenonPeg.works(statement).get(2));
        }
        if (has(statement, "flare")) {
            works.add(TenonWedges.works(statement).get(2));
        }
        return works;
    }

    private static boolean has(List<MadeJoint> statement, String figure) {
        return statement.getFirst().figure(figure).isPresent();
    }

    private static Work.GaugeSetting thick(List<MadeJoint> statement) {
        return new Work.GaugeSetting("mortise gauge", Work.figure(statement, "thick"));
    }

    private static Work.GaugeSetting reach(List<MadeJoint> statement) {
        return new Work.GaugeSetting("tenon", Work.figure(statement, "long"));
    }

    /** How deep the mortises are; a through one is as deep as the wood. */
    private static Work.GaugeSetting depth(List<MadeJoint> statement) {
        return has(statement, MortiseTenon.MORTISE)
                ? new Work.GaugeSetting("mortise depth", Work.figure(statement, MortiseTenon.MORTISE))
                : reach(statement);
    }

    private static Work mortise(List<MadeJoint> statement, List<String> parts) {
        return new Work(
                Work.Stage.AFTER_LENGTH,
                "Chop the mortises, all marked out together",
                parts,
                List.of(),
                "mortise gauge, mortise chisel and mallet, or a drill and chisel",
                List.of(thick(statement), depth(statement)),
                "the face side; the part's drawing says how far in",
                "the chisel stands square; a through mortise is cut from both sides",
                "Clamp the work low on the bench; keep the free hand behind the edge.");
    }

    private static List<Work> loose(List<MadeJoint> statement) {
        return List.of(mortise(statement, Rebate.names(statement)),
                LoosePiece.making(statement, LoosePiece.Kind.TENON));
    }

    private static Work tenon(List<MadeJoint> statement, List<String> rails, List<String> stiles) {
        return new Work(
                Work.Stage.AFTER_LENGTH,
                "Saw the tenons, cheeks before shoulders, to fit the mortises as cut",
                rails,
                stiles,
                "the same mortise gauge, tenon saw, shoulder plane",
                List.of(thick(statement), reach(statement)),
                "the face side, with the gauge as it was set for the mortises",
                "the tenon goes in by hand pressure, holds its own weight, and the shoulder closes all round",
                "Pare away from the fingers.");
    }

    private static Work glue(List<MadeJoint> statement) {
        return new Work(
                Work.Stage.GLUE,
                "Glue the mortise and tenon joints and clamp across the shoulders",
                Rebate.names(statement),
                List.of(),
                "clamps and blocks, glue brush",
                List.of(),
                "",
                "shoulders closed, diagonals equal, no winding",
                "Read the glue's label.");
    }
}

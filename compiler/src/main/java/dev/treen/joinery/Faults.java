package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Setting;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/** What joints of several kinds have to say alike. */
final class Faults {
    private Faults() {
    }

    /** A joint of no size: it cuts nothing. */
    static Optional<Effect> ofNoSize(Joint joint, String what, Measure size) {
        if (size.value().signum() > 0) {
            return Optional.empty();
        }
        return Optional.of(Effect.only(Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                size.at(),
                "The " + joint.kind() + " between `" + joint.left().name() + "` and `" + joint.right().name()
                        + "` is not " + what + " at all")
                .because("It would cut nothing, and hold nothing.")
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name())
                .build()));
    }

    /** Parts that do not touch, with how far they are apart. */
    static Finding apart(Meeting meeting, BoxContact.Apart apart, Settings settings) {
        LengthFormat format = settings.format();
        StringBuilder how = new StringBuilder();
        for (Axis axis : Axis.values()) {
            Length gap = Length.ofMm(apart.gaps().get(axis));
            if (!gap.isZero()) {
                how.append(how.isEmpty() ? "" : ", ").append(format.text(gap)).append(switch (axis) {
                    case X -> " from left to right";
                    case Y -> " from front to back";
                    case Z -> " in height";
                });
            }
        }
        Joint joint = meeting.joint();
        Finding.Builder finding = meeting(
                meeting,
                JoineryFindings.DO_NOT_MEET,
                "`" + joint.left().name() + "` and `" + joint.right().name() + "` do not meet")
                .found("Between them lie " + how + ".")
                .because("A joint is cut where two parts touch; sizes are written between the joints.");
        List<Remedy> ways = new Moved(meeting, settings).together(apart);
        ways.forEach(finding::remedy);
        if (ways.isEmpty()) {
            finding.remedy(Remedy.choice("change the `at` of one of them until the faces that are joined touch"));
        }
        return finding.build();
    }

    /** Parts that lie in each other, with what they share. */
    static Finding overlapping(Meeting meeting, Box shared, Settings settings) {
        Joint joint = meeting.joint();
        Finding.Builder finding = meeting(
                meeting,
                JoineryFindings.OVERLAP,
                "`" + joint.left().name() + "` and `" + joint.right().name() + "` fill the same space")
                .found("They share " + Axes.sides(shared, settings.format()) + " (across, deep, high).")
                .because("Sizes are written between the joints: the joint itself adds what goes into the other part.");
        List<Remedy> ways = new Moved(meeting, settings).outOf();
        ways.forEach(finding::remedy);
        if (ways.isEmpty()) {
            finding.remedy(Remedy.choice("change the `at` of one of them until it only touches the other"));
        }
        return finding.build();
    }

    /** A finding about a joint and both its parts. */
    static Finding.Builder said(Joint joint, FindingKind kind, Span at, String headline) {
        return Finding.of(kind, at, headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    /** The same with both parts where they lie, for what is wrong with how they meet. */
    static Finding.Builder meeting(Meeting meeting, FindingKind kind, String headline) {
        Joint joint = meeting.joint();
        return Finding.of(kind, joint.at(), headline)
                .related(meeting.left().placing().span(), "`" + joint.left().name() + "` lies here")
                .related(meeting.right().placing().span(), "`" + joint.right().name() + "` lies here")
                .about(joint.left().name())
                .about(joint.right().name());
    }

    /** Parts that touch, and not as their joint wants: how they do touch, and that another joint or place is wanted. */
    static Finding meetsWrongly(Meeting meeting, String headline, String because) {
        return meeting(meeting, JoineryFindings.MEETS_WRONGLY, headline)
                .found(meeting.sentence())
                .because(because)
                .remedy(Remedy.choice("choose a joint for the way they meet, or turn or move one of them"))
                .build();
    }

    /** A property given another value, or written where it is left out. */
    static Remedy setting(Joint joint, String property, String value, String text) {
        Optional<Setting> there = Optional.ofNullable(joint.settings().get(property));
        String written = property + " " + value;
        Edit edit = there.map(setting -> new Edit(setting.valueAt(), value))
                .orElseGet(() -> new Edit(
                        joint.blockAt(), joint.hasBlock() ? " " + written + ";" : " { " + written + " }"));
        return Remedy.choice(text, edit);
    }

    /** A gap on both sides that leaves nothing of the part that lies in an opening. */
    static Finding eaten(Joint joint, Measure gap, Length opening, LengthFormat format, String because) {
        return said(joint, JoineryFindings.DOES_NOT_FIT, gap.at(),
                "The gap leaves nothing of `" + joint.left().name() + "`")
                .found("It is " + format.text(gap.value()) + " on each side of an opening of " + format.text(opening)
                        + ".")
                .because(because)
                .remedy(setting(joint, "gap", "auto", "let Treen reckon it: `gap auto`"))
                .build();
    }

    /** A length as a project writes it in any units, up to the next half millimetre. */
    static String written(Length length) {
        Length half = Length.ofMm(1).dividedBy(2);
        Length up = length.roundUpTo(half);
        boolean whole = up.roundDownTo(Length.ofMm(1)).equals(up);
        return up.roundDownTo(Length.ofMm(1)).mm().getNumerator() + (whole ? "mm" : ".5mm");
    }
}

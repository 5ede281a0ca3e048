package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.model.Datum;
import dev.treen.model.Joint;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What no setting of any joint can be, whatever its kind: finer than anything can be set out, zero where pieces stand that
 * far apart, longer than both parts. What a kind knows better it says itself.
 */
record SettingFaults(Meeting meeting, List<PropertySchema> properties, LengthFormat format) {
    /** What a calliper reads; nothing at the bench is set finer (common practice, no source). */
    private static final Length FINEST = Length.ofMm(2).dividedBy(100);

    /** How far one piece stands from the next, in every kind that has a row of them. */
    private static final String EVERY = "every";

    /** What cannot even be tried. */
    Optional<Finding> senseless() {
        return lengths(length -> length.signum() > 0 && length.compareTo(FINEST) < 0)
                .map(setting -> begun(setting, "`" + setting.name() + "` is finer than anything can be set out")
                        .found("A calliper reads 0.02 mm (0.001 in); this is less.")
                        .build())
                .or(() -> lengths(Length::isZero)
                        .filter(setting -> setting.name().equals(EVERY))
                        .map(setting -> begun(setting, "`" + EVERY + "` leaves no room from one to the next")
                                .found("It is the distance between their middles.")
                                .build()));
    }

    /** What reaches beyond both parts, where the kind itself has said nothing against it. */
    Optional<Finding> beyond(Effect effect) {
        Length both = longest(meeting.left()).plus(longest(meeting.right()));
        return lengths(length -> length.compareTo(both) > 0)
                .filter(setting -> effect.findings().stream().allMatch(each -> each.severity() == Severity.NOTE))
                .map(setting -> begun(setting, "`" + setting.name() + "` is longer than both parts together")
                        .found("Put end to end they are " + format.text(both) + " long.")
                        .build());
    }

    /** A finding of the kind with a way out, where it says none: of the setting at which it lies, or of its sizes. */
    Finding withWayOut(Finding finding) {
        if (!finding.remedies().isEmpty() || finding.severity() != Severity.ERROR) {
            return finding;
        }
        return properties.stream()
                .flatMap(property -> joint().given(property.name()).stream()
                        .filter(setting -> setting.valueAt().equals(finding.at()))
                        .map(setting -> property.wayOut(setting.valueAt())))
                .findFirst()
                .map(finding::with)
                .orElseGet(() -> finding.with(Remedy.choice("take larger parts there, or write the sizes of this joint"
                        + " smaller than its rules make them")));
    }

    private Optional<Setting> lengths(Predicate<Length> such) {
        return properties.stream()
                .flatMap(property -> joint().given(property.name()).stream())
                .filter(setting -> setting.value() instanceof Datum.Exactly(var quantity)
                        && quantity.asLength().filter(such).isPresent())
                .findFirst();
    }

    private Finding.Builder begun(Setting setting, String headline) {
        return Faults.said(joint(), JoineryFindings.DOES_NOT_FIT, setting.valueAt(), headline)
                .remedy(wayOut(setting));
    }

    private Remedy wayOut(Setting setting) {
        return properties.stream()
                .filter(property -> property.name().equals(setting.name()))
                .map(property -> property.wayOut(setting.valueAt()))
                .findFirst()
                .orElseThrow();
    }

    private Joint joint() {
        return meeting.joint();
    }

    private static Length longest(Meeting.Placed placed) {
        List<Length> sizes = new ArrayList<>();
        for (int measure = 0; measure < 3; measure++) {
            sizes.add(placed.part().measure(measure).value());
        }
        return sizes.stream().reduce(Length.ZERO, Length::max);
    }
}

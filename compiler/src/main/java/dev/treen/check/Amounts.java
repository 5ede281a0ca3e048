package dev.treen.check;

import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.wood.Figures;

/** Lengths in findings: as the project shows them where that is exact, and finer where rounding would hide the fault. */
final class Amounts {
    private static final Length MM_STEP = Length.ofMm(1).dividedBy(2);
    private static final Length INCH_STEP = Length.ofInches(1, 32);
    private static final Length COARSE_MARK = Length.ofInches(1, 8);
    private static final double COARSE_MM = 10;

    private Amounts() {
    }

    /** A length of the project in words. */
    static String text(Length length, Settings settings) {
        LengthFormat format = settings.format();
        return format.shown(length).equals(length) ? format.text(length) : fine(length.toDoubleMm(), settings);
    }

    /** A number of nature in words: hundredths of a millimetre, or thousandths of an inch. */
    static String fine(double mm, Settings settings) {
        return settings.format().imperial()
                ? DecimalText.write(mm / 25.4, 3) + " in"
                : DecimalText.write(mm, 2) + " mm";
    }

    /** A limit of the trade in words, by the name of its figure in millimetres: in inches to the nearest eighth, or fine. */
    static String limit(String figure, Settings settings) {
        double mm = Figures.standard().value(figure);
        if (!settings.format().imperial()) {
            return DecimalText.write(mm, 2) + " mm";
        }
        return mm < COARSE_MM
                ? fine(mm, settings)
                : settings.format().text(Length.nearest(mm, MM_STEP).roundTo(COARSE_MARK));
    }

    /** A length as it is written into the project, exactly. */
    static String written(Length length, Settings settings) {
        return settings.written(length);
    }

    /** The step to which advised sizes are rounded: half a millimetre or 1/32 in. */
    static Length step(Settings settings) {
        return settings.units() == Unit.IN ? INCH_STEP : MM_STEP;
    }

    /** As much as may be, in words: down to a mark of the rule, or fine where that would leave nothing. */
    static String atMost(double mm, Settings settings) {
        Length marked = Length.nearest(mm, Length.ofMm(1).dividedBy(100)).roundDownTo(step(settings));
        return marked.signum() > 0 ? settings.format().text(marked) : fine(mm, settings);
    }

    /** A moisture content in words. */
    static String moisture(double percent) {
        return DecimalText.write(percent, 1) + " %";
    }
}

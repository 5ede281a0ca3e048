package dev.treen.drawing;

import dev.treen.quantity.LengthFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The sheets that printers take: A4 of ISO 216, Letter of ANSI/ASME Y14.1 (8.5 x 11 in). Both from memory. */
public enum PaperSize {
    /** 210 x 297 mm. */
    A4(210, 297),
    /** 8.5 x 11 in. */
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    PaperSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** How a command names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The sheet that {@code word} names. */
    public static Optional<PaperSize> named(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }

    /** All words that name one. */
    public static List<String> words() {
        return Arrays.stream(values()).map(PaperSize::word).toList();
    }

    /** The sheet that is at hand where lengths are shown like this: Letter beside inches, A4 beside millimetres. */
    public static PaperSize beside(LengthFormat format) {
        return format.imperial() ? LETTER : A4;
    }

    /** The narrow side in millimetres. */
    public double width() {
        return width;
    }

    /** The long side in millimetres. */
    public double height() {
        return height;
    }
}

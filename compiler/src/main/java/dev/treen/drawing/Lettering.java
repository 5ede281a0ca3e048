package dev.treen.drawing;

/**
 * How much room letters take. Widths are those of the usual sans-serif fonts, rounded up, so that words find room whatever
 * font a viewer has.
 */
final class Lettering {
    /** Letters of dimensions: capitals 2.5 mm high (ISO 3098-1; from memory). */
    static final double USUAL = 3.5;
    static final double HEAD = 5;
    static final double SMALL = 2.8;

    private Lettering() {
    }

    static double width(String words, double size, boolean bold) {
        double ems = words.codePoints().mapToDouble(Lettering::ems).sum();
        return ems * size * (bold ? 1.08 : 1);
    }

    /** From the top of the capitals to the foot of letters such as g. */
    static double height(double size) {
        return size * 0.95;
    }

    private static double ems(int letter) {
        if ("iljtfrI.,:;'|!()[]/ ".indexOf(letter) >= 0) {
            return 0.36;
        }
        if (letter == 'm' || letter == 'w' || letter == 'W' || letter == 'M' || letter == '@' || letter == '%') {
            return 0.95;
        }
        if (letter < 0x250) {
            return Character.isUpperCase(letter) ? 0.74 : 0.6;
        }
        return 1.05;
    }
}

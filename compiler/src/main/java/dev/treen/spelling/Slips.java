package dev.treen.spelling;

/** Slips of the pen: a letter more, less or other, or two neighbours swapped. */
public final class Slips {

    private Slips() {
    }

    /**
     * The least number of slips that turn one word into the other, no stretch of it mended twice (optimal string
     * alignment, Damerau 1964 restricted). Takes time for the product
     * of both lengths: whoever asks for long words bounds them first.
     */
    public static int between(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], now[j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            int[] spare = before;
            before = last;
            last = now;
            now = spare;
        }
        return last[b.length()];
    }
}

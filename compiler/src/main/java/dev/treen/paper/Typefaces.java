package dev.treen.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters that a PDF carries: Liberation (SIL Open Font License 1.1), and DejaVu Sans (Bitstream Vera licence) for what
 * Liberation lacks. The licences lie beside them in the jar. No letter comes from the machine: a plan looks the same
 * wherever it is made.
 */
final class Typefaces {
    private static final String SANS = "Plan Sans";
    private static final String SERIF = "Plan Serif";
    private static final String MONO = "Plan Mono";
    private static final String REST = "Plan Rest";
    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    /** Every font has the letters before this one: Latin, its accents, what European languages need of them. */
    private static final int BEYOND = 0x250;

    private record Face(String file, String family, int weight, FontStyle style) {}

    private static final List<Face> FACES = List.of(
            new Face("/liberation/LiberationSans-Regular.ttf", SANS, REGULAR, FontStyle.NORMAL),
            new Face("/liberation/LiberationSans-Bold.ttf", SANS, BOLD, FontStyle.NORMAL),
            new Face("/liberation/LiberationSans-Italic.ttf", SANS, REGULAR, FontStyle.ITALIC),
            new Face("/liberation/LiberationSerif-Regular.ttf", SERIF, REGULAR, FontStyle.NORMAL),
            new Face("/liberation/LiberationSerif-Bold.ttf", SERIF, BOLD, FontStyle.NORMAL),
            new Face("/liberation/LiberationSerif-Italic.ttf", SERIF, REGULAR, FontStyle.ITALIC),
            new Face("/liberation/LiberationMono-Regular.ttf", MONO, REGULAR, FontStyle.NORMAL),
            new Face("/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf", REST, REGULAR, FontStyle.NORMAL));

    private Typefaces() {
    }

    /** Lets {@code builder} take letters as they are wanted; only those used get into {@code document}. */
    static void give(PdfRendererBuilder builder, PDDocument document) {
        for (Face each : FACES) {
            builder.useFont(new Late(document, each.file()), each.family(), each.weight(), each.style(), true);
        }
    }

    /** The letters of {@code text} that no font here has, by their numbers: a box is set for them. */
    static NavigableSet<Integer> lacking(String text) {
        NavigableSet<Integer> lacking = new TreeSet<>();
        text.codePoints().filter(letter -> letter >= BEYOND && !Character.isWhitespace(letter)
                && Character.getType(letter) != Character.FORMAT).forEach(lacking::add);
        for (Face each : FACES) {
            // Only what is read by nobody so far is looked for in the next font.
            if (!lacking.isEmpty() && (each.family().equals(SANS) || each.family().equals(REST))
                    && each.weight() == REGULAR && each.style() == FontStyle.NORMAL) {
                lacking.removeIf(knownTo(each.file()));
            }
        }
        return lacking;
    }

    private static Predicate<Integer> knownTo(String file) {
        try (TrueTypeFont letters = letters(file)) {
            CmapLookup numbers = letters.getUnicodeCmapLookup();
            return letter -> numbers.getGlyphId(letter) != 0;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static TrueTypeFont letters(String file) throws IOException {
        try (InputStream in = Typefaces.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the letters " + file + " are not among the resources");
            }
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        }
    }

    /** A font that is read when the first letter of it is set. */
    private static final class Late extends PDFontSupplier {
        private final PDDocument document;
        private final String file;
        private Optional<PDFont> font = Optional.empty();

        Late(PDDocument document, String file) {
            super(null);
            this.document = document;
            this.file = file;
        }

        @Override
        public PDFont supply() {
            if (font.isEmpty()) {
                font = Optional.of(read());
            }
            return font.get();
        }

        private PDFont read() {
            try {
                TrueTypeFont letters = letters(file);
                // Joined letters such as fi would cost a quarter of the time, and some readers do not find them.
                letters.setEnableGsub(false);
                return PDType0Font.load(document, letters, true);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }
}

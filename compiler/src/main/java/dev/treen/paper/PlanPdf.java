package dev.treen.paper;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import dev.treen.drawing.PaperSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;

/**
 * The plan as one PDF: drawings as lines and not as dots, letters carried along, pages numbered, a bookmark a section and a
 * step, tags for those who hear it. The same plan gives the same bytes: the file tells no day and no machine.
 */
public final class PlanPdf {
    /** What came of it. */
    public sealed interface Made {
    }

    /** The whole file. */
    public static final class Whole implements Made {
        private final byte[] bytes;

        private Whole(byte[] bytes) {
            this.bytes = bytes;
        }

        /** A copy of its bytes. */
        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /** No file; the machine's Java cannot draw, say, because it came without its desktop part. */
    public record Not(String why) implements Made {}

    private PlanPdf() {
    }

    /** Lays {@code page}, the page of a plan, on sheets of {@code size}; the page is left as it was. */
    public static Made of(Document page, PaperSize size) {
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
        try {
            return new Whole(written(PaperPage.of(page, size), size));
        } catch (IOException | RuntimeException | LinkageError broken) {
            return new Not(broken.getClass().getSimpleName() + ": " + broken.getMessage());
        }
    }

    private static byte[] written(Document page, PaperSize size) throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(new W3CDom().fromJsoup(page), "");
        builder.useDefaultPageSize((float) size.width(), (float) size.height(), PdfRendererBuilder.PageSizeUnits.MM);
        builder.useSVGDrawer(new BatikSVGDrawer());
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((uri, type) -> false, when);
        }
        builder.useReplacementText("\u25a1");
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Treen");
        try (PDDocument document = new PDDocument()) {
            builder.usePDDocument(document);
            Typefaces.give(builder, document);
            RightToLeft.give(builder);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
                return saved(document);
            }
        }
    }

    private static byte[] saved(PDDocument document) throws IOException {
        PDDocumentInformation information = document.getDocumentInformation();
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        day.clear();
        day.set(2000, Calendar.JANUARY, 1);
        information.setCreationDate(day);
        information.setModificationDate(day);
        document.setDocumentId(0L);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }
}

package org.benchleaf.publish;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.TextDirection;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;

/** Lays pages out as PDF that says what its parts are (PDF/UA-1, ISO 14289-1) and lasts (PDF/A-2a, ISO 19005-2). */
final class PaperFile {

    /** As the style of sheets calls it. */
    private static final String FAMILY = "Paper";
    private static final Pattern MADE = Pattern.compile("(<xmp:CreateDate>)[^<]++(</xmp:CreateDate>)");
    private static final int PLAIN = 400;
    private static final int BOLD = 700;

    static {
        XRLog.setLoggingEnabled(false);
    }

    private PaperFile() {
    }

    /**
     * The file of a page; nothing is read from outside the page.
     *
     * @param day that the file says it was made on
     */
    static byte[] of(Document page, LocalDate day) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(new W3CDom().fromJsoup(page), "about:blank");
        builder.useUriResolver((base, address) -> address.startsWith("data:") || address.startsWith("#") ? address : null);
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.useSVGDrawer(new BatikSVGDrawer());
        boolean isFromRight = page.selectFirst("html").attr("dir").equals("rtl");
        letters(builder, isFromRight);
        if (isFromRight) {
            rightToLeft(builder);
        }
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            CaptionTags.readFirst(renderer.getPdfDocument());
            RepeatedHeads.leaveOut(renderer.getPdfDocument());
            if (isFromRight) {
                MirroredRows.readInOrder(renderer.getPdfDocument());
            }
            return bytes(renderer.getPdfDocument(), day);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Lines that run from right to left, with letters that join. */
    private static void rightToLeft(PdfRendererBuilder builder) {
        builder.useUnicodeBidiSplitter(RightToLeft::new);
        builder.useUnicodeBidiReorderer(new RightToLeft.Turned());
        builder.defaultTextDirection(TextDirection.RTL);
    }

    /** The same page is the same file, whenever it is laid out: its time is the start of the day, its number the same for all. */
    private static byte[] bytes(PDDocument file, LocalDate day) throws IOException {
        Calendar start = GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
        file.getDocumentInformation().setCreationDate(start);
        PDMetadata metadata = file.getDocumentCatalog().getMetadata();
        String said = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        metadata.importXMPMetadata(MADE.matcher(said).replaceFirst("$1" + day + "T00:00:00+00:00$2").getBytes(StandardCharsets.UTF_8));
        file.setDocumentId(0L);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        file.save(bytes);
        return bytes.toByteArray();
    }

    /** The slanted faces have no Arabic letters, and Arabic is never slanted. */
    private static void letters(PdfRendererBuilder builder, boolean isUpright) {
        for (boolean isBold : new boolean[] {false, true}) {
            for (boolean isItalic : new boolean[] {false, true}) {
                builder.useFont(() -> PaperLetters.face(isBold, isItalic && !isUpright), FAMILY, isBold ? BOLD : PLAIN,
                        isItalic ? FontStyle.ITALIC : FontStyle.NORMAL, true);
            }
        }
    }
}

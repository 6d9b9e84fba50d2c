package org.benchleaf.publish;

import java.io.IOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** The words of a tagged file in the order of its tags, as a reading program follows them; a figure by the words that stand for it. */
final class TagReading {

    /** What keeps its own order within a piece that is turned round. */
    private static final Pattern FROM_LEFT = Pattern.compile("[\\p{IsLatin}\\p{Nd}°%/²³.,:–-]+");

    private final Map<COSDictionary, Map<Integer, String>> texts = new HashMap<>();
    private final List<String> read = new ArrayList<>();

    private TagReading() {
    }

    /** The pieces one after the other. */
    static List<String> of(byte[] file) throws IOException {
        TagReading reading = new TagReading();
        try (PDDocument pdf = Loader.loadPDF(file)) {
            for (PDPage page : pdf.getPages()) {
                PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                extractor.setSuppressDuplicateOverlappingText(false);
                extractor.processPage(page);
                Map<Integer, String> pieces = new HashMap<>();
                extractor.getMarkedContents().forEach(content -> collect(content, pieces));
                reading.texts.put(page.getCOSObject(), pieces);
            }
            reading.walk(pdf.getDocumentCatalog().getStructureTreeRoot(), null);
        }
        return reading.read;
    }

    private static void collect(PDMarkedContent content, Map<Integer, String> pieces) {
        StringBuilder text = new StringBuilder();
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition letter) {
                text.append(letter.getUnicode());
            } else if (part instanceof PDMarkedContent inner) {
                collect(inner, pieces);
            }
        }
        if (content.getMCID() >= 0) {
            pieces.merge(content.getMCID(), text.toString(), String::concat);
        }
    }

    private void walk(PDStructureNode node, PDPage page) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().equals("Figure")) {
                    read.add("[" + element.getAlternateDescription() + "]");
                } else {
                    walk(element, element.getPage() == null ? page : element.getPage());
                }
            } else if (kid instanceof Integer piece) {
                add(page, piece);
            } else if (kid instanceof PDMarkedContentReference reference) {
                add(reference.getPage() == null ? page : reference.getPage(), reference.getMCID());
            }
        }
    }

    private void add(PDPage page, int piece) {
        read.add(inOrder(texts.get(page.getCOSObject()).getOrDefault(piece, "")));
    }

    /** Arabic letters are drawn from left to right, so that a piece of them is turned round (Unicode Standard Annex 9). */
    private static String inOrder(String drawn) {
        if (drawn.codePoints().noneMatch(ArabicLetters::has)
                && drawn.codePoints().noneMatch(letter -> Character.UnicodeScript.of(letter) == Character.UnicodeScript.ARABIC)) {
            return drawn;
        }
        String turned = Normalizer.normalize(new StringBuilder(drawn).reverse().toString(), Normalizer.Form.NFKC);
        return FROM_LEFT.matcher(turned).replaceAll(run -> new StringBuilder(run.group()).reverse().toString().replace("$", "\\$"));
    }
}

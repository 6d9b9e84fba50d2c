package org.benchleaf.publish;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;

/**
 * The heads of tables that go on over the page: the layout draws them on each page and tags them each time, so that every column would be
 * read as often as the table has pages. The head of the first page alone is read, the others are artifacts (ISO 32000-1, 14.8.2.2).
 */
final class RepeatedHeads {

    private static final String CELL = "TH";
    private static final String WITH_NUMBER = "BDC";
    private static final String WITHOUT = "BMC";

    private final Map<COSDictionary, Set<Integer>> repeated = new LinkedHashMap<>();

    private RepeatedHeads() {
    }

    /** Takes what is repeated out of the tags of a file. */
    static void leaveOut(PDDocument file) throws IOException {
        RepeatedHeads heads = new RepeatedHeads();
        heads.find(file.getDocumentCatalog().getStructureTreeRoot());
        for (PDPage page : file.getPages()) {
            Set<Integer> pieces = heads.repeated.get(page.getCOSObject());
            if (pieces != null) {
                asArtifacts(file, page, pieces);
            }
        }
    }

    private void find(PDStructureNode node) {
        if (node instanceof PDStructureElement element && element.getStructureType().equals(CELL)) {
            COSDictionary cell = element.getCOSObject();
            first(cell, cell.getCOSDictionary(COSName.PG), new ArrayList<>());
        }
        node.getKids().stream().filter(PDStructureNode.class::isInstance).forEach(kid -> find((PDStructureNode) kid));
    }

    /** Keeps the pieces that lie on the page of the first, in the order of the tags. */
    private void first(COSDictionary element, COSDictionary above, List<COSDictionary> first) {
        COSDictionary own = element.getCOSDictionary(COSName.PG) == null ? above : element.getCOSDictionary(COSName.PG);
        if (!(element.getDictionaryObject(COSName.K) instanceof COSArray kids)) {
            return;
        }
        for (int at = 0; at < kids.size(); at++) {
            COSBase kid = kids.getObject(at);
            if (kid instanceof COSDictionary inner && inner.containsKey(COSName.S)) {
                first(inner, own, first);
                continue;
            }
            COSDictionary page = kid instanceof COSDictionary piece && piece.containsKey(COSName.PG)
                    ? piece.getCOSDictionary(COSName.PG) : own;
            if (first.isEmpty()) {
                first.add(page);
            } else if (page != first.get(0)) {
                repeated.computeIfAbsent(page, any -> new HashSet<>()).add(kid instanceof COSInteger number ? number.intValue()
                        : ((COSDictionary) kid).getInt(COSName.MCID));
                kids.remove(at);
                at--;
            }
        }
    }

    private static void asArtifacts(PDDocument file, PDPage page, Set<Integer> pieces) throws IOException {
        List<Object> tokens = new PDFStreamParser(page).parse();
        List<Object> written = new ArrayList<>();
        for (Object token : tokens) {
            int last = written.size() - 1;
            if (token instanceof Operator operator && operator.getName().equals(WITH_NUMBER)
                    && written.get(last) instanceof COSDictionary marks && pieces.contains(marks.getInt(COSName.MCID))) {
                written.remove(last);
                written.set(last - 1, COSName.ARTIFACT);
                written.add(Operator.getOperator(WITHOUT));
            } else {
                written.add(token);
            }
        }
        PDStream contents = new PDStream(file);
        try (OutputStream out = contents.createOutputStream(COSName.FLATE_DECODE)) {
            new ContentStreamWriter(out).writeTokens(written);
        }
        page.setContents(contents);
    }
}

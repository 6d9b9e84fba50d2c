package org.benchleaf.publish;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Rows whose first cell stands at the right. The layout knows no columns that run from right to left: the cells are laid out in the
 * other order, and the tags of the file put back in the order in which they are read.
 */
final class MirroredRows {

    private static final String ROW = "TR";
    private static final String PAIR = "Part";
    private static final int LEVELS = 2;
    private static final String GROUP = "Div";

    private MirroredRows() {
    }

    /**
     * Turns the cells of each row of a page round, also of a term and its meaning, which stand in a row on paper. Such a row takes a name
     * that no page uses, by which its tag is known.
     */
    static void turn(Document page) {
        page.select("dl > div").tagName("part");
        for (Element row : page.select("tr, part")) {
            List<Element> cells = new ArrayList<>(row.children());
            Collections.reverse(cells);
            cells.forEach(row::appendChild);
        }
    }

    /** Lets the tags of a file name the cells of each row in the order in which they are read. */
    static void readInOrder(PDDocument file) {
        turnBack(file.getDocumentCatalog().getStructureTreeRoot());
    }

    private static void turnBack(PDStructureNode node) {
        if (node instanceof PDStructureElement element) {
            if (element.getStructureType().equals(ROW)) {
                turnBack(element.getCOSObject());
            } else if (element.getStructureType().equals(PAIR)) {
                element.setStructureType(GROUP);
                turnBack(row(element).getCOSObject());
            }
        }
        node.getKids().stream().filter(PDStructureNode.class::isInstance).map(PDStructureNode.class::cast).forEach(MirroredRows::turnBack);
    }

    /** The row of a pair: the layout puts a group and a row around its cells. */
    private static PDStructureNode row(PDStructureNode pair) {
        PDStructureNode row = pair;
        for (int level = 0; level < LEVELS && row.getKids().size() == 1 && row.getKids().get(0) instanceof PDStructureNode only; level++) {
            row = only;
        }
        return row;
    }

    private static void turnBack(COSDictionary row) {
        if (row.getDictionaryObject(COSName.K) instanceof COSArray cells) {
            List<COSBase> turned = new ArrayList<>();
            cells.forEach(turned::add);
            Collections.reverse(turned);
            cells.clear();
            turned.forEach(cells::add);
        }
    }
}

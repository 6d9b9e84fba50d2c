package org.benchleaf.publish;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
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

    private MirroredRows() {
    }

    /** Turns the cells of each row of a page round. */
    static void turn(Document page) {
        for (Element row : page.select("tr")) {
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
        COSBase kids = node.getCOSObject().getDictionaryObject("K");
        if (node instanceof PDStructureElement element && ROW.equals(element.getStructureType()) && kids instanceof COSArray cells) {
            List<COSBase> turned = new ArrayList<>();
            cells.forEach(turned::add);
            Collections.reverse(turned);
            cells.clear();
            turned.forEach(cells::add);
        }
        node.getKids().stream().filter(PDStructureNode.class::isInstance).map(PDStructureNode.class::cast).forEach(MirroredRows::turnBack);
    }
}

package org.benchleaf.publish;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;

/**
 * The tags of captions, each read before its table: the layout leaves them behind it. ISO 32000-1, 14.8.4.3.4: a caption is the first or
 * last child of its table.
 */
final class CaptionTags {

    private static final COSName KIDS = COSName.K;

    private CaptionTags() {
    }

    /** Puts the caption of each table of a file at the beginning of the table. */
    static void readFirst(PDDocument file) {
        readFirst(file.getDocumentCatalog().getStructureTreeRoot());
    }

    private static void readFirst(PDStructureNode node) {
        if (node.getCOSObject().getDictionaryObject(KIDS) instanceof COSArray kids) {
            for (int at = kids.size() - 1; at > 0; at--) {
                if (is(kids.getObject(at), "Caption") && is(kids.getObject(at - 1), "Table")) {
                    ((COSDictionary) kids.getObject(at)).setItem(COSName.P, kids.get(at - 1));
                    moveInto((COSDictionary) kids.getObject(at - 1), kids.get(at));
                    kids.remove(at);
                }
            }
        }
        node.getKids().stream().filter(PDStructureNode.class::isInstance).forEach(kid -> readFirst((PDStructureNode) kid));
    }

    private static boolean is(COSBase tag, String type) {
        return tag instanceof COSDictionary element && type.equals(element.getNameAsString(COSName.S));
    }

    private static void moveInto(COSDictionary table, COSBase caption) {
        COSBase rows = table.getDictionaryObject(KIDS);
        COSArray kids = rows instanceof COSArray several ? several : new COSArray();
        if (kids != rows && rows != null) {
            kids.add(rows);
        }
        kids.add(0, caption);
        table.setItem(KIDS, kids);
    }
}

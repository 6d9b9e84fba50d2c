package org.benchleaf.publish;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/** The directions of a text, as the layout of sheets asks for them (Unicode Standard Annex 9, as the running Java has it). */
final class RightToLeft implements BidiSplitter {

    private List<BidiTextRun> runs = List.of();

    @Override
    public void setParagraph(String text, byte direction) {
        int base = direction == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : direction == LTR ? Bidi.DIRECTION_LEFT_TO_RIGHT
                : Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT;
        Bidi directions = new Bidi(text, base);
        List<BidiTextRun> found = new ArrayList<>();
        for (int at = 0; at < directions.getRunCount(); at++) {
            found.add(new BidiTextRun(directions.getRunStart(at), directions.getRunLimit(at) - directions.getRunStart(at),
                    directions.getRunLevel(at) % 2 == 0 ? LTR : RTL));
        }
        runs = found;
    }

    @Override
    public int countTextRuns() {
        return runs.size();
    }

    @Override
    public BidiTextRun getVisualRun(int at) {
        return runs.get(at);
    }

    @Override
    public byte getBaseDirection(String text) {
        return new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight() ? LTR : RTL;
    }

    /** Turns a run round, its letters in their shapes. */
    static final class Turned implements BidiReorderer {

        @Override
        public String reorderRTLTextToLTR(String text) {
            StringBuilder turned = new StringBuilder(text).reverse();
            for (int at = 0; at < turned.length(); at++) {
                turned.setCharAt(at, mirrored(turned.charAt(at)));
            }
            return turned.toString();
        }

        private static char mirrored(char sign) {
            int pair = "()[]{}<>«»‹›".indexOf(sign);
            return pair < 0 ? sign : "()[]{}<>«»‹›".charAt(pair ^ 1);
        }

        @Override
        public String shapeText(String text) {
            return ArabicLetters.shaped(text);
        }

        @Override
        public String deshapeText(String text) {
            return text;
        }

        @Override
        public boolean isLiveImplementation() {
            return true;
        }
    }
}

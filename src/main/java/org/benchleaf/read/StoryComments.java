package org.benchleaf.read;

import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Takes the author's comments out of a story: what stands in them was not meant for readers. */
final class StoryComments {

    private static final String OPEN = "<!--";
    private static final String CLOSE = "-->";

    private StoryComments() {
    }

    /** From where to where each closed comment reaches, in the order of the text. */
    static List<int[]> ranges(Node document) {
        List<int[]> ranges = new ArrayList<>();
        for (Node node : document.getDescendants()) {
            if (node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
                ranges(node.getChars().toString()).forEach(range -> ranges.add(
                        new int[] {node.getStartOffset() + range[0], node.getStartOffset() + range[1]}));
            }
        }
        ranges.sort(Comparator.comparingInt(range -> range[0]));
        return ranges;
    }

    private static List<int[]> ranges(String text) {
        List<int[]> ranges = new ArrayList<>();
        int from = 0;
        for (int open = text.indexOf(OPEN); open >= 0; open = text.indexOf(OPEN, from)) {
            int close = text.indexOf(CLOSE, open + OPEN.length());
            if (close < 0) {
                break;
            }
            from = close + CLOSE.length();
            ranges.add(new int[] {open, from});
        }
        return ranges;
    }

    /** Takes them out and returns the pieces in which a comment is opened and never closed. */
    static List<Node> remove(Node document) {
        List<Node> open = new ArrayList<>();
        for (Node node : document.getDescendants()) {
            if (node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
                String left = withoutComments(node.getChars().toString());
                if (left.contains(OPEN)) {
                    open.add(node);
                } else if (left.length() < node.getChars().length()) {
                    replace(node, left.strip());
                }
            }
        }
        return open;
    }

    /** What stands outside comments; a comment that is never closed stays. */
    private static String withoutComments(String text) {
        return without(text, 0, ranges(text));
    }

    /**
     * What stands outside some ranges.
     *
     * @param start the offset of the text, in which the ranges count
     * @param ranges in the order of the text; those outside it are passed over
     */
    static String without(String text, int start, List<int[]> ranges) {
        StringBuilder left = new StringBuilder();
        int from = 0;
        for (int[] range : ranges) {
            if (range[0] >= start + from && range[1] <= start + text.length()) {
                left.append(text, from, range[0] - start);
                from = range[1] - start;
            }
        }
        return left.append(text.substring(from)).toString();
    }

    private static void replace(Node node, String left) {
        if (!left.isEmpty()) {
            Text text = new Text(BasedSequence.of(left));
            if (node instanceof HtmlBlockBase) {
                Paragraph paragraph = new Paragraph(text.getChars());
                paragraph.appendChild(text);
                node.insertBefore(paragraph);
            } else {
                node.insertBefore(text);
            }
        }
        node.unlink();
    }
}

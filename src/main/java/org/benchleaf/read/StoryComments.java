package org.benchleaf.read;

import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Takes the author's comments out of a story: what stands in them was not meant for readers. */
final class StoryComments {

    private static final String OPEN = "<!--";
    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->", Pattern.DOTALL);

    private StoryComments() {
    }

    /** Takes them out and returns the pieces in which a comment is opened and never closed. */
    static List<Node> remove(Node document) {
        List<Node> open = new ArrayList<>();
        for (Node node : document.getDescendants()) {
            if (node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
                String left = COMMENT.matcher(node.getChars()).replaceAll("");
                if (left.contains(OPEN)) {
                    open.add(node);
                } else if (left.length() < node.getChars().length()) {
                    replace(node, left.strip());
                }
            }
        }
        return open;
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

package org.benchleaf.privacy;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.message.SourceText;

/**
 * What of a source can reach a page: its text without comments and without the permissions, which name by right who gave
 * them and stand on no page; of the same shape, so that places stay true.
 */
final class OpenText {

    private static final String FENCE = "---";
    private static final String COMMENT_BEGINS = "<!--";
    private static final String COMMENT_ENDS = "-->";
    /** The block of what may be published, up to the next key at the left edge. */
    private static final Pattern PUBLICATION = Pattern.compile("(?m)^publication:.*(?:\\n(?:[ \\t}\\]-].*)?$)*+");
    private static final Pattern NO_BREAK = Pattern.compile("[^\n]");

    private OpenText() {
    }

    static String of(SourceText source) {
        StringBuilder text = new StringBuilder();
        boolean yaml = source.file().endsWith(".yaml");
        YamlComments comments = new YamlComments();
        for (int number = 1; number <= source.lineCount(); number++) {
            String line = source.line(number);
            if (line.equals(FENCE)) {
                yaml = number == 1;
            }
            text.append(number == 1 ? "" : "\n").append(yaml ? comments.without(line) : line);
        }
        return withoutHtmlComments(withoutPermissions(text.toString()));
    }

    /** Searched for by hand: a pattern would look for the end anew at each beginning. */
    private static String withoutHtmlComments(String text) {
        StringBuilder open = new StringBuilder();
        int at = 0;
        for (int from = text.indexOf(COMMENT_BEGINS); from >= 0; from = text.indexOf(COMMENT_BEGINS, at)) {
            int to = text.indexOf(COMMENT_ENDS, from + COMMENT_BEGINS.length());
            if (to < 0) {
                break;
            }
            to += COMMENT_ENDS.length();
            open.append(text, at, from).append(NO_BREAK.matcher(text.substring(from, to)).replaceAll(" "));
            at = to;
        }
        return open.append(text, at, text.length()).toString();
    }

    /** Only in the front matter: a story may begin a line with the same word. */
    private static String withoutPermissions(String text) {
        int end = text.indexOf("\n" + FENCE);
        return end < 0 ? text : blank(PUBLICATION, text.substring(0, end)) + text.substring(end);
    }

    private static String blank(Pattern pattern, String text) {
        return pattern.matcher(text).replaceAll(found ->
                Matcher.quoteReplacement(NO_BREAK.matcher(found.group()).replaceAll(" ")));
    }
}

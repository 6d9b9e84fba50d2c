package org.benchleaf.browser;

import java.util.ArrayList;
import java.util.List;

/** A style sheet taken apart into its rules, without what surrounds them. */
final class StyleText {

    /**
     * One rule.
     *
     * @param selector of the elements
     * @param body what it sets
     */
    record StyleRule(String selector, String body) {
    }

    private StyleText() {
    }

    /** The rules of a sheet, those inside layers and conditions too, in order. */
    static List<StyleRule> rules(String css) {
        List<StyleRule> rules = new ArrayList<>();
        read(css.replaceAll("(?s)/\\*.*?\\*/", ""), rules);
        return rules;
    }

    private static void read(String css, List<StyleRule> rules) {
        int at = 0;
        while (true) {
            int open = css.indexOf('{', at);
            if (open < 0) {
                return;
            }
            int close = closing(css, open);
            String head = css.substring(at, open).replaceAll("(?s).*[;}]", "").strip();
            String body = css.substring(open + 1, close);
            if (head.startsWith("@") && body.contains("{")) {
                read(body, rules);
            } else if (!head.startsWith("@")) {
                rules.add(new StyleRule(head, body.strip()));
            }
            at = close + 1;
        }
    }

    private static int closing(String css, int open) {
        int depth = 0;
        for (int at = open; at < css.length(); at++) {
            depth += css.charAt(at) == '{' ? 1 : css.charAt(at) == '}' ? -1 : 0;
            if (depth == 0) {
                return at;
            }
        }
        throw new IllegalArgumentException("a brace is not closed in: " + css.substring(open, Math.min(css.length(), open + 80)));
    }
}

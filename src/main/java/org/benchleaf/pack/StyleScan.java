package org.benchleaf.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the addresses that a style sheet loads. */
final class StyleScan {

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern ADDRESS = Pattern.compile(
            "url\\(\\s*+(?:\"([^\"]*+)\"|'([^']*+)'|([^()\\s\"']*+))\\s*+\\)|@import\\s++(?:\"([^\"]*+)\"|'([^']*+)')");

    private StyleScan() {
    }

    static List<PageScan.Link> of(String css) {
        List<PageScan.Link> links = new ArrayList<>();
        Matcher address = ADDRESS.matcher(COMMENT.matcher(css).replaceAll(" "));
        while (address.find()) {
            for (int group = 1; group <= address.groupCount(); group++) {
                if (address.group(group) != null) {
                    links.add(new PageScan.Link(address.group(group), true, false));
                }
            }
        }
        return links;
    }
}

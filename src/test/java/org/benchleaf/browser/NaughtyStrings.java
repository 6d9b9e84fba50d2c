package org.benchleaf.browser;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Words that are to be shown and never run: a public list, and a few that aim at how our own pages are made. */
final class NaughtyStrings {

    private static final Path LIST = Path.of("src/test/resources/browser/naughty-strings.txt");
    private static final List<String> OUR_OWN = List.of("</script><script>alert(901)</script>",
            "--><script>alert(902)</script><!--", "]]><script>alert(903)</script>", "</title><script>alert(904)</script>",
            "</textarea></style></svg><img src=x onerror=alert(905)>", "${alert(906)}", "<#assign x=1>${x?eval}",
            "\\u003cscript\\u003ealert(907)\\u003c/script\\u003e", "&lt;script&gt;alert(908)&lt;/script&gt;",
            "' onfocus=alert(909) autofocus='", "\" onfocus=alert(910) autofocus=\"", "`-alert(911)-`", "\u2028alert(912)//");

    private NaughtyStrings() {
    }

    /** All that a content file may hold; characters that it may not are refused before anything is made of them. */
    static List<String> all() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<String> lines = Files.lines(LIST)) {
            for (String line : lines.skip(1).toList()) {
                all.add(new ObjectMapper().readValue(line, String.class));
            }
        }
        all.addAll(OUR_OWN);
        // Many differ only in which byte is spelled out as four plain characters; one of each kind tells as much.
        Set<String> kinds = new HashSet<>();
        all.removeIf(words -> !kinds.add(words.replaceAll("(\\\\x[0-9A-Fa-f]{2})+", "\\\\x").replaceAll("[0-9]+", "1")));
        return all.stream().map(words -> words.replaceAll("[\\p{Cntrl}\\u2028\\u2029\\uFEFF\\uE000-\\uF8FF\\uFFFE\\uFFFF]", ""))
                .toList();
    }

    /** The list cut into parts of about so many characters each. */
    static List<List<String>> parts(List<String> all, int characters) {
        List<List<String>> parts = new ArrayList<>();
        List<String> part = new ArrayList<>();
        int length = 0;
        for (String words : all) {
            if (length + words.length() > characters && !part.isEmpty()) {
                parts.add(part);
                part = new ArrayList<>();
                length = 0;
            }
            part.add(words);
            length += words.length() + 1;
        }
        parts.add(part);
        return parts;
    }

    /** As many of them, joined, as a short field takes. */
    static String few(List<String> words, int from, int most) {
        StringBuilder few = new StringBuilder();
        for (int at = 0; at < words.size(); at++) {
            String next = words.get((from + at) % words.size());
            if (few.length() + next.length() + 1 <= most) {
                few.append(next).append(' ');
            }
        }
        return few.toString().strip();
    }
}

package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.publish.SiteFile;

/**
 * The texts of files that are searched by themselves for the same values, so that they need not be searched once more where they
 * stand whole inside another file: a style or a script in a page that can be taken away, a file in an archive.
 */
public final class SearchedTexts {

    private static final List<String> ELEMENTS = List.of("style", "script");

    private final Set<String> texts;

    private SearchedTexts(Set<String> texts) {
        this.texts = texts;
    }

    /** None. */
    public static SearchedTexts none() {
        return new SearchedTexts(Set.of());
    }

    /** The texts of these files; empty ones and those that are no text are left out. */
    public static SearchedTexts of(List<SiteFile> files) {
        return new SearchedTexts(files.stream().map(SiteFile::bytes).filter(bytes -> bytes.length > 0 && Readings.isText(bytes))
                .map(SearchedTexts::text).collect(Collectors.toUnmodifiableSet()));
    }

    /** Whether it is one of these texts, from its first byte to its last. */
    boolean hold(byte[] bytes) {
        return !texts.isEmpty() && texts.contains(text(bytes));
    }

    /** The text, with its lines, without the styles and scripts in it that are one of these texts from first letter to last. */
    String leftOut(String text) {
        String left = text;
        if (!texts.isEmpty()) {
            for (String element : ELEMENTS) {
                left = leftOut(left, "<" + element + ">", "</" + element + ">");
            }
        }
        return left;
    }

    private String leftOut(String text, String begin, String end) {
        StringBuilder left = new StringBuilder(text.length());
        int from = 0;
        int start = text.indexOf(begin);
        while (start >= 0) {
            int inner = start + begin.length();
            int stop = text.indexOf(end, inner);
            if (stop < 0) {
                break;
            }
            String inside = text.substring(inner, stop);
            if (texts.contains(inside)) {
                left.append(text, from, inner);
                inside.chars().filter(letter -> letter == '\n').forEach(line -> left.append('\n'));
                from = stop;
            }
            start = text.indexOf(begin, stop);
        }
        return left.append(text, from, text.length()).toString();
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}

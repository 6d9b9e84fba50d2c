package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.publish.SiteFile;

/**
 * Files that are searched by themselves for the same values, so that they need not be searched once more where they stand whole,
 * byte for byte, inside another file: a style or a script in a page that can be taken away, a file in an archive.
 */
public final class SearchedFiles {

    private static final List<String> ELEMENTS = List.of("style", "script");

    /** What the files hold, by how many bytes that is: few have as many as another, and each is compared to its last byte. */
    private final Map<Integer, List<byte[]>> files;

    private SearchedFiles(Map<Integer, List<byte[]>> files) {
        this.files = files;
    }

    /** None. */
    public static SearchedFiles none() {
        return new SearchedFiles(Map.of());
    }

    /** These files. */
    public static SearchedFiles of(Collection<SiteFile> files) {
        return new SearchedFiles(files.stream().map(SiteFile::bytes).collect(Collectors.groupingBy(bytes -> bytes.length)));
    }

    /** Whether bytes are those of one of these files, from the first to the last. */
    boolean hold(byte[] bytes) {
        return files.getOrDefault(bytes.length, List.of()).stream().anyMatch(file -> Arrays.equals(file, bytes));
    }

    /** The text, with its lines, without the styles and scripts in it that are one of these files from first letter to last. */
    String leftOut(String text) {
        String left = text;
        if (!files.isEmpty()) {
            for (String element : ELEMENTS) {
                left = leftOut(left, "<" + element + ">", "</" + element + ">");
            }
        }
        return left;
    }

    private String leftOut(String text, String begin, String end) {
        StringBuilder left = new StringBuilder();
        int from = 0;
        int start = text.indexOf(begin);
        while (start >= 0) {
            int inner = start + begin.length();
            int stop = text.indexOf(end, inner);
            if (stop < 0) {
                break;
            }
            String inside = text.substring(inner, stop);
            if (hold(inside.getBytes(StandardCharsets.UTF_8))) {
                left.append(text, from, inner);
                inside.chars().filter(letter -> letter == '\n').forEach(line -> left.append('\n'));
                from = stop;
            }
            start = text.indexOf(begin, stop);
        }
        return from == 0 ? text : left.append(text, from, text.length()).toString();
    }
}

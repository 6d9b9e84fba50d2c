package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.comments.CommentType;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import org.yaml.snakeyaml.tokens.CommentToken;

/**
 * The comments of a YAML file, each without its sign, by the line of the text to which it belongs: the next one from its own line on.
 *
 * @param byLine those above or behind a text
 * @param closing those behind the last text
 */
record TextComments(Map<Integer, List<String>> byLine, List<String> closing) {

    /**
     * Gathers them.
     *
     * @param firstLine the number in the file of the first line of the YAML
     * @param lines of texts, as the file counts them
     */
    static TextComments of(String yaml, int firstLine, NavigableSet<Integer> lines) {
        Map<Integer, List<String>> byLine = new TreeMap<>();
        List<String> closing = new ArrayList<>();
        ScannerImpl scanner = new ScannerImpl(new StreamReader(yaml), options());
        while (scanner.checkToken()) {
            if (scanner.getToken() instanceof CommentToken comment && comment.getCommentType() != CommentType.BLANK_LINE) {
                Integer line = lines.ceiling(comment.getStartMark().getLine() + firstLine);
                (line == null ? closing : byLine.computeIfAbsent(line, each -> new ArrayList<>())).add(comment.getValue());
            }
        }
        return new TextComments(byLine, closing);
    }

    List<String> above(int line) {
        return byLine.getOrDefault(line, List.of());
    }

    private static LoaderOptions options() {
        LoaderOptions options = new LoaderOptions();
        options.setProcessComments(true);
        options.setCodePointLimit(FrontMatter.MOST_BYTES);
        return options;
    }
}

package org.benchleaf.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.benchleaf.message.Messages;

/**
 * Finds what a case file says of its publication, however little of the rest can be read: whether a case may be public
 * must not hang on a slip elsewhere in it.
 */
public final class PublicationReader {

    static final String CASE_FILE = "case.md";
    static final String KEY = "publication";
    private static final Pattern BEGINS = Pattern.compile("[\"']?publication[\"']?[ \t]*:([ \t].*)?");
    private static final Pattern NEXT_KEY = Pattern.compile("[^\\s#}\\])-][^:]{0,200}:([ \t].*)?");
    private static final Pattern STATE = Pattern.compile("(?m)^(?:[ \t]+|[^#\n]{0,200}[{,][ \t]*)state[ \t]*:[ \t]*[\"']?(\\w+)");
    private static final String FENCE = "---";

    private PublicationReader() {
    }

    /**
     * What was found.
     *
     * @param node the group {@code publication}
     * @param whole whether it could be read whole; if not, it holds the state alone
     */
    public record Found(Node.Mapping node, boolean whole) {
    }

    /**
     * The publication of one case; empty if it cannot be told. Nothing is said: what is wrong is told when the case is
     * read whole.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static Optional<Found> find(Path contentRoot, Path caseFolder) {
        Path file = caseFolder.resolve(CASE_FILE);
        return new ContentFolder(contentRoot).head(file, FrontMatter.MOST_BYTES)
                .flatMap(text -> find(file.toString(), text));
    }

    private static Optional<Found> find(String name, String text) {
        List<String> front = front(text);
        List<Integer> begins = new ArrayList<>();
        for (int line = 0; line < front.size(); line++) {
            if (BEGINS.matcher(front.get(line)).matches()) {
                begins.add(line);
            }
        }
        if (begins.isEmpty()) {
            return publication(name, String.join("\n", front)).map(node -> new Found(node, true));
        }
        if (begins.size() > 1) {
            return Optional.empty();
        }
        String block = block(front, begins.get(0));
        return publication(name, block).map(node -> new Found(node, true)).or(() -> stateAlone(name, block));
    }

    /** The lines between the first fence and the next; where a fence is missing, all on that side. */
    private static List<String> front(String text) {
        List<String> lines = text.lines().toList();
        int first = fence(lines, 0);
        boolean opens = first < lines.size() && lines.subList(0, first).stream().noneMatch(line -> BEGINS.matcher(line).matches());
        return opens ? lines.subList(first + 1, fence(lines, first + 1)) : lines.subList(0, first);
    }

    private static int fence(List<String> lines, int from) {
        int line = from;
        while (line < lines.size() && !lines.get(line).stripTrailing().equals(FENCE)) {
            line++;
        }
        return line;
    }

    private static String block(List<String> front, int begin) {
        int end = begin + 1;
        while (end < front.size() && !NEXT_KEY.matcher(front.get(end)).matches()) {
            end++;
        }
        return String.join("\n", front.subList(begin, end));
    }

    private static Optional<Node.Mapping> publication(String name, String yaml) {
        return YamlFile.read(new TextFile(name, yaml), 0, yaml.length(), new Messages()).root()
                .flatMap(root -> root.get(KEY))
                .filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast);
    }

    private static Optional<Found> stateAlone(String name, String block) {
        List<String> states = STATE.matcher(block).results().map((MatchResult found) -> found.group(1)).toList();
        return states.size() != 1 ? Optional.empty()
                : publication(name, "publication:\n  state: " + states.get(0)).map(node -> new Found(node, false));
    }
}

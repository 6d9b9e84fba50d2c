package org.benchleaf.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.read.YamlText;

/**
 * The comments in which a translation shows the words of the case: {@code #en: …} above a text, {@code <!--en #wash: …-->} above a
 * section of the story. They begin with the language of the case, and no blank stands before it, so that they are told from comments
 * of the translator's. The words from which an older translation was made are called {@code before}.
 */
final class OriginalWords {

    private static final String BEFORE = " before";
    private static final String OPEN = "<!--";
    private static final String CLOSE = "-->";
    private static final String CLOSE_AS_TEXT = "--&gt;";
    /** Blanks and ends of lines; blanks that must not break stay. */
    private static final Pattern BLANKS = Pattern.compile("\\s++");
    private static final int WIDTH = 110;

    private final String language;

    OriginalWords(String language) {
        this.language = language;
    }

    /** A text in one line. */
    static String inOneLine(String text) {
        return BLANKS.matcher(text.strip()).replaceAll(" ");
    }

    /** A text in lines of about a width, broken at blanks. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        int from = 0;
        while (text.length() - from > width) {
            int near = text.lastIndexOf(' ', from + width);
            int blank = near > from ? near : text.indexOf(' ', from + width);
            if (blank < 0) {
                break;
            }
            lines.add(text.substring(from, blank));
            from = blank + 1;
        }
        lines.add(text.substring(from));
        return lines;
    }

    /**
     * Translated words as a value in YAML, with what leads to it; a long one in lines, which YAML joins again, but with one blank for
     * several.
     */
    static List<String> value(String lead, String indent, String words) {
        String value = YamlText.onLine(words);
        List<String> lines = value.equals(words) && !words.contains("  ") ? lines(words, WIDTH) : List.of(value);
        List<String> written = new ArrayList<>();
        lines.forEach(line -> written.add((written.isEmpty() ? lead : indent) + line));
        return written;
    }

    /** The lines of a comment in YAML, without its sign. */
    List<String> inYaml(String words, boolean before) {
        return lines(inOneLine(words), WIDTH).stream().map(line -> yamlHead(before) + line).toList();
    }

    /** What comments in YAML show of the words of the case, in one line; empty if nothing. */
    String fromYaml(List<String> comments, boolean before) {
        return inOneLine(String.join(" ", comments.stream().filter(line -> line.startsWith(yamlHead(before)))
                .map(line -> line.substring(yamlHead(before).length())).toList()));
    }

    /** Whether a comment in YAML is one of these. */
    boolean isIn(String comment) {
        return comment.startsWith(yamlHead(false)) || comment.startsWith(yamlHead(true));
    }

    private String yamlHead(boolean before) {
        return language + (before ? BEFORE : "") + ": ";
    }

    /** A comment in Markdown. */
    String inMarkdown(String address, String words, boolean before) {
        return markdownHead(address, before) + "\n" + words.replace(CLOSE, CLOSE_AS_TEXT) + "\n" + CLOSE;
    }

    private String markdownHead(String address, boolean before) {
        return OPEN + language + CaseTexts.sectionId(address).map(id -> " #" + id).orElse("") + (before ? BEFORE : "") + ":";
    }

    /**
     * Markdown without these comments, which are handed on with their addresses.
     *
     * @param shown takes the words of the case as they were when the file was written
     * @param before takes those that the translation was made from
     */
    String outOfMarkdown(String markdown, BiConsumer<String, String> shown, BiConsumer<String, String> before) {
        List<String> left = new ArrayList<>();
        List<String> lines = markdown.lines().toList();
        for (int at = 0; at < lines.size(); at++) {
            Optional<Head> head = head(lines.get(at));
            int last = head.isPresent() ? end(lines, at) : at;
            if (head.isEmpty() || last < 0) {
                left.add(lines.get(at));
                continue;
            }
            int close = lines.get(last).indexOf(CLOSE);
            String words = String.join("\n", lines.subList(at + 1, last)) + "\n" + lines.get(last).substring(0, close);
            (head.get().before() ? before : shown).accept(head.get().address(), words.replace(CLOSE_AS_TEXT, CLOSE).strip());
            left.add(lines.get(last).substring(close + CLOSE.length()));
            at = last;
        }
        return String.join("\n", left).strip();
    }

    private static int end(List<String> lines, int from) {
        for (int at = from + 1; at < lines.size(); at++) {
            if (lines.get(at).contains(CLOSE)) {
                return at;
            }
        }
        return -1;
    }

    private record Head(String address, boolean before) {
    }

    private Optional<Head> head(String line) {
        if (!line.startsWith(OPEN + language) || !line.endsWith(":")) {
            return Optional.empty();
        }
        String rest = line.substring(OPEN.length() + language.length(), line.length() - 1);
        boolean before = rest.endsWith(BEFORE);
        String id = before ? rest.substring(0, rest.length() - BEFORE.length()) : rest;
        return id.isEmpty() || id.startsWith(" #") && id.indexOf(' ', 1) < 0
                ? Optional.of(new Head(CaseTexts.address(id.isEmpty() ? "" : id.substring(2)), before)) : Optional.empty();
    }
}

package org.benchleaf.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Story;

/**
 * A file of translated words as its translator left it: also what no page shows, such as comments and words that the case has no
 * use for any more.
 *
 * @param texts every text of the front matter, empty ones too, in order
 * @param marks of the words that texts were made from, by address
 * @param closing comments behind the last text, each without its sign
 * @param opening the Markdown above the first section of the story: comments, for more would be a section
 * @param sections each section of the story with its Markdown, comments included
 */
public record TranslationFile(List<Text> texts, Map<String, String> marks, List<String> closing, String opening, List<Written> sections) {

    /** The key under which the marks of the texts stand that were translated. */
    public static final String MADE_FROM = "made from";

    /** The key under which words are kept that the case has no text for any more. */
    public static final String NO_LONGER = "no longer in the case";

    private static final int FIRST_LINE_OF_YAML = 2;

    public TranslationFile {
        texts = List.copyOf(texts);
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
        closing = List.copyOf(closing);
        sections = List.copyOf(sections);
    }

    /**
     * One text.
     *
     * @param address the keys that lead to it; items of a list count from 1
     * @param mark of the words that it was made from, where the text is one that the case has no more; else among the marks
     * @param comments that stand above or behind it, each without its sign
     */
    public record Text(String address, String words, Optional<String> mark, List<String> comments) {
        public Text {
            comments = List.copyOf(comments);
        }
    }

    /** One section of the story and its Markdown as written, with its comments. */
    public record Written(Story.Section section, String markdown) {
    }

    /** Reads the front matter of a file and its story; empty where it cannot be read, which reading the case tells. */
    static Optional<TranslationFile> read(TextFile file) {
        Messages told = new Messages();
        Optional<FrontMatter> front = FrontMatter.find(file, told);
        Optional<Node.Mapping> root = front.flatMap(found -> YamlFile.read(file, found.start(), found.end(), told).root());
        if (front.isEmpty() || root.isEmpty()) {
            return Optional.empty();
        }
        List<Text> texts = new ArrayList<>();
        List<String> closing = comments(file.text().substring(front.get().start(), front.get().end()), root.get(), texts);
        Story story = StoryReader.read(file.lines(), file.text(), front.get().body(), told);
        List<Integer> starts = starts(file.text(), front.get().body(), story);
        return told.hasErrors() ? Optional.empty() : Optional.of(new TranslationFile(texts, marks(root.get()), closing,
                part(file.text(), front.get().body(), starts.isEmpty() ? file.text().length() : starts.get(0)),
                written(file.text(), starts, story)));
    }

    /** The marks of a translation, by address. */
    public static Map<String, String> marks(Node.Mapping root) {
        Map<String, String> marks = new LinkedHashMap<>();
        if (root.get(MADE_FROM).orElse(null) instanceof Node.Mapping all) {
            all.entries().forEach((address, entry) -> {
                if (entry.value() instanceof Node.Scalar mark) {
                    marks.put(address, mark.text().strip());
                }
            });
        }
        return marks;
    }

    /** The mark of a section of the story; that of its own id goes before, since the case may have named its section anew. */
    public static String mark(Map<String, String> marks, Story.Section section, String address) {
        return marks.getOrDefault(CaseTexts.address(section.id()), marks.get(address));
    }

    /** Hands on every text of a translation with its address, in the order written. */
    public static void texts(Node.Mapping root, BiConsumer<String, Node.Scalar> taken) {
        root.entries().forEach((key, entry) -> {
            if (!key.equals(MADE_FROM) && !key.equals(NO_LONGER)) {
                texts(key, entry.value(), taken);
            }
        });
    }

    private static void texts(String address, Node node, BiConsumer<String, Node.Scalar> taken) {
        if (node instanceof Node.Mapping group) {
            group.entries().forEach((key, entry) -> texts(address + "." + key, entry.value(), taken));
        } else if (node instanceof Node.Sequence list) {
            for (int at = 0; at < list.items().size(); at++) {
                texts(address + "." + (at + 1), list.items().get(at), taken);
            }
        } else if (node instanceof Node.Scalar scalar) {
            taken.accept(address, scalar);
        }
    }

    /** Words that the case has no text for, each with its place. */
    private static void kept(Node.Mapping root, BiConsumer<Text, Node> taken) {
        if (root.get(NO_LONGER).orElse(null) instanceof Node.Sequence list) {
            list.items().stream().filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast).forEach(item ->
                    taken.accept(new Text(text(item, "was").orElse(""), text(item, "words").orElse(""), text(item, MADE_FROM),
                            List.of()), item));
        }
    }

    private static Optional<String> text(Node.Mapping item, String key) {
        return item.get(key).filter(Node.Scalar.class::isInstance).map(value -> ((Node.Scalar) value).text());
    }

    /** Gathers the texts, each with the comments that belong to it; what is behind the last is returned. */
    private static List<String> comments(String yaml, Node.Mapping root, List<Text> texts) {
        TreeMap<Integer, List<Text>> byLine = new TreeMap<>();
        texts(root, (address, scalar) -> byLine.computeIfAbsent(scalar.place().line(), line -> new ArrayList<>())
                .add(new Text(address, scalar.text(), Optional.empty(), List.of())));
        kept(root, (text, node) -> byLine.computeIfAbsent(node.place().line(), line -> new ArrayList<>()).add(text));
        TextComments comments = TextComments.of(yaml, FIRST_LINE_OF_YAML, byLine.navigableKeySet());
        byLine.forEach((line, there) -> there.forEach(text -> texts.add(new Text(text.address(), text.words(), text.mark(),
                text == there.get(0) ? comments.above(line) : List.of()))));
        return comments.closing();
    }

    /** Where in the file each section begins. */
    private static List<Integer> starts(String text, int body, Story story) {
        List<Integer> lines = new ArrayList<>(List.of(0));
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
            lines.add(end + 1);
        }
        return story.sections().stream().map(section -> Math.max(body, lines.get(section.place().line() - 1))).toList();
    }

    private static List<Written> written(String text, List<Integer> starts, Story story) {
        return Stream.iterate(0, at -> at < starts.size(), at -> at + 1).map(at -> new Written(story.sections().get(at),
                part(text, starts.get(at), at + 1 < starts.size() ? starts.get(at + 1) : text.length()))).toList();
    }

    private static String part(String text, int from, int to) {
        return text.substring(from, to).replace("\r\n", "\n").strip();
    }
}

package org.benchleaf.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.message.Messages;

/**
 * A studio's own words in another language as their translator left them, with comments and words that nothing of the studio's has a
 * use for any more.
 *
 * @param texts each with its words, empty ones too, in order; then those that are kept
 * @param marks of the texts that words were made from, by the address of the text
 * @param closing comments behind the last text, each without its sign
 */
public record StudioWordsFile(List<Text> texts, Map<String, String> marks, List<String> closing) {

    /** The key under which words are kept whose text no file of the studio's says any more. */
    public static final String NO_LONGER = "no longer said";

    /** Keys that are no texts. */
    public static final Set<String> OWN_KEYS = Set.of(TranslationFile.MADE_FROM, NO_LONGER);

    private static final int FIRST_LINE = 1;

    public StudioWordsFile {
        texts = List.copyOf(texts);
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
        closing = List.copyOf(closing);
    }

    /**
     * One text.
     *
     * @param text of the studio's, as it was when the words were written
     * @param words in the language of the file; may be empty
     * @param comments that stand above or behind it, each without its sign
     */
    public record Text(String text, String words, List<String> comments) {
        public Text {
            comments = List.copyOf(comments);
        }
    }

    /** The file of a language beside the studio's others, whether there is one or not. */
    public static Path file(Path contentRoot, String language) {
        return contentRoot.resolve(LibraryReader.WORDS_OF + language + ".yaml");
    }

    /**
     * A file with all that it holds; empty if it cannot be read, which {@link LibraryReader#read} tells.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static Optional<StudioWordsFile> read(Path contentRoot, Path file) {
        Messages told = new Messages();
        return new ContentFolder(contentRoot).read(file, FrontMatter.MOST_BYTES, told).flatMap(text ->
                YamlFile.read(text, 0, text.text().length(), told).root().map(root -> of(text.text(), root)));
    }

    private static StudioWordsFile of(String yaml, Node.Mapping root) {
        Map<String, Node.Entry> entries = words(root);
        TreeSet<Integer> lines = new TreeSet<>();
        entries.values().forEach(entry -> lines.add(entry.keyPlace().line()));
        List<Node.Mapping> kept = kept(root);
        kept.forEach(item -> lines.add(item.place().line()));
        TextComments comments = TextComments.of(yaml, FIRST_LINE, lines);
        List<Text> texts = new ArrayList<>();
        entries.forEach((text, entry) -> texts.add(new Text(text, ((Node.Scalar) entry.value()).text().strip(),
                comments.above(entry.keyPlace().line()))));
        kept.forEach(item -> texts.add(new Text(text(item, "was"), text(item, "words"), comments.above(item.place().line()))));
        return new StudioWordsFile(texts, TranslationFile.marks(root), comments.closing());
    }

    /** The texts of a file with the places of their keys and their words. */
    public static Map<String, Node.Entry> words(Node.Mapping root) {
        Map<String, Node.Entry> words = new LinkedHashMap<>();
        root.entries().forEach((text, entry) -> {
            if (!OWN_KEYS.contains(text) && entry.value() instanceof Node.Scalar) {
                words.put(text, entry);
            }
        });
        return words;
    }

    private static List<Node.Mapping> kept(Node.Mapping root) {
        return root.get(NO_LONGER).filter(Node.Sequence.class::isInstance).map(list -> ((Node.Sequence) list).items()).orElse(List.of())
                .stream().filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast).toList();
    }

    private static String text(Node.Mapping item, String key) {
        return item.get(key).filter(Node.Scalar.class::isInstance).map(value -> ((Node.Scalar) value).text().strip()).orElse("");
    }
}

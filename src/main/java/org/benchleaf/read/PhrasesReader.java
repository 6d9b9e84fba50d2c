package org.benchleaf.read;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.benchleaf.model.Phrases;

/** Reads what the program itself says in another language, from {@code reference/translated/<language>.yaml}. */
public final class PhrasesReader {

    private static final String FOLDER = "/reference/translated/";
    private static final Map<String, Phrases> READ = new ConcurrentHashMap<>();

    private PhrasesReader() {
    }

    /**
     * The words for a BCP 47 tag: its own, those of its bare language, or none, so that everything stays English.
     *
     * @throws IllegalStateException if one of our own files is wrong
     */
    public static Phrases in(String tag) {
        return READ.computeIfAbsent(tag, PhrasesReader::find);
    }

    private static Phrases find(String tag) {
        return Stream.of(tag, Locale.forLanguageTag(tag).getLanguage()).filter(name -> OwnFile.isThere(FOLDER + name + ".yaml"))
                .findFirst().map(name -> phrases(tag, OwnFile.tree(FOLDER + name + ".yaml"))).orElse(Phrases.ENGLISH);
    }

    private static Phrases phrases(String tag, Node.Mapping root) {
        Map<String, String> words = new HashMap<>();
        group(root, "words").entries().forEach((english, entry) -> words.put(english, text(entry.value())));
        Set<String> ofSums = group(root, "sums").entries().keySet();
        group(root, "sums").entries().forEach((english, entry) -> words.put(english, text(entry.value())));
        words.putAll(official(group(root, "signals")));
        Map<String, String> statements = official(group(root, "statements"));
        return new Phrases(tag, words, statements, ofSums);
    }

    /** Wordings that are nobody's to choose, each with its source. */
    private static Map<String, String> official(Node.Mapping rows) {
        Map<String, String> wordings = new HashMap<>();
        rows.entries().forEach((code, entry) -> {
            Node.Mapping row = (Node.Mapping) entry.value();
            text(row.get("source").orElseThrow(() -> new IllegalStateException("the wording of " + code + " has no source")));
            wordings.put(code, text(row.get("words").orElseThrow(() -> new IllegalStateException("no words for " + code))));
        });
        return wordings;
    }

    private static Node.Mapping group(Node.Mapping root, String key) {
        return (Node.Mapping) root.get(key).orElseThrow(() -> new IllegalStateException("no '" + key + "' in a file of " + FOLDER));
    }

    private static String text(Node node) {
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip() : "";
        if (text.isEmpty()) {
            throw new IllegalStateException(node.place() + " has no words");
        }
        return text;
    }
}

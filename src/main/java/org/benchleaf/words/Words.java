package org.benchleaf.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.calculate.CountedUnit;
import org.benchleaf.calculate.Plurals;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.MissingValue;
import org.benchleaf.page.Table;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;

/**
 * The words of the interface in one language, from {@code words/interface_<language>.properties}.
 *
 * <p>English is complete. What a language lacks it has from English, which the finished page marks ({@code ForeignWords}); a
 * key that no file has is a mistake of the program and stops it.
 */
public final class Words {

    static final String BASE = "en";
    private static final String PARTLY_READ = "partly-read.";
    private static final Pattern HOLE = Pattern.compile("\\{([a-z][a-zA-Z]*)}");
    private static final Map<String, Words> LOADED = new ConcurrentHashMap<>();

    private final String language;
    private final Map<String, String> texts;
    /** The same words where not all of the publication was read from which a case is retold; made when first asked for. */
    private Words partlyRead;
    /** Asked for again on every page. */
    private final Map<String, Map<String, String>> groups = new ConcurrentHashMap<>();

    private Words(String language, Map<String, String> texts) {
        this.language = language;
        this.texts = texts;
    }

    /** The words for a BCP 47 tag: its own, those of its bare language, or the English ones. */
    public static Words in(String tag) {
        return LOADED.computeIfAbsent(tag, Words::find);
    }

    /** The words for a case of whose publication not all was read: what it leaves out may be told there. */
    public synchronized Words ofPartlyRead() {
        if (partlyRead == null) {
            Map<String, String> told = new TreeMap<>(texts);
            texts.forEach((key, text) -> {
                if (key.startsWith(PARTLY_READ)) {
                    told.put(key.substring(PARTLY_READ.length()), text);
                }
            });
            partlyRead = new Words(language, told);
        }
        return partlyRead;
    }

    private static Words find(String tag) {
        String bare = Locale.forLanguageTag(tag).getLanguage();
        Map<String, String> english = file(BASE).orElseThrow(() -> new IllegalStateException("the English words are missing"));
        return Stream.of(tag, bare).filter(candidate -> !candidate.equals(BASE)).flatMap(candidate -> file(candidate).map(own -> {
            Map<String, String> texts = new TreeMap<>(english);
            texts.putAll(own);
            return new Words(candidate, texts);
        }).stream()).findFirst().orElseGet(() -> new Words(BASE, english));
    }

    private static Optional<Map<String, String>> file(String language) {
        try (InputStream file = Words.class.getResourceAsStream("/words/interface_" + language + ".properties")) {
            return file == null ? Optional.empty() : Optional.of(read(file));
        } catch (IOException broken) {
            throw new UncheckedIOException("the words for " + language + " cannot be read", broken);
        }
    }

    private static Map<String, String> read(InputStream file) throws IOException {
        Properties properties = new Properties();
        properties.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        Map<String, String> texts = new TreeMap<>();
        properties.forEach((key, text) -> texts.put((String) key, (String) text));
        return texts;
    }

    /** The BCP 47 tag of the words themselves, which is English where a language has none of its own. */
    public String language() {
        return language;
    }

    /** What a language calls itself; its tag if it has no words of its own. */
    public static String name(String tag) {
        Words words = in(tag);
        return words.language.equals(Locale.forLanguageTag(tag).getLanguage()) ? words.say("language.name") : tag;
    }

    /** A text of a case file as it begins a line of a page: with a capital, but pH keeps its own. */
    public static String capital(String text) {
        return text.isEmpty() || text.startsWith("pH") ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A name as it stands within a sentence: with a small letter, unless more than its first letter is a capital, as in EDTA. */
    public static String small(String name) {
        return name.length() < 2 || Character.isUpperCase(name.charAt(1)) ? name
                : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** Every text, holes unfilled. */
    public Collection<String> all() {
        return texts.values();
    }

    /** Whether there is a text for the key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** Columns of words, their headers by keys. */
    public List<Table.Column> columns(String... keys) {
        return Stream.of(keys).map(key -> new Table.Column(say(key), false)).toList();
    }

    /** The text of a key with a piece, such as a link, in its only hole. */
    public RichText around(String key, String hole, Inline piece) {
        String mark = "{" + hole + "}";
        String text = texts.getOrDefault(key, "");
        int at = text.indexOf(mark);
        if (at < 0) {
            throw new IllegalArgumentException("no words for '" + key + "' with {" + hole + "} in " + language);
        }
        return RichText.of(text.substring(0, at)).then(piece).then(text.substring(at + mark.length()));
    }

    /**
     * The text of a key with its named holes filled.
     *
     * @param holes name, value, name, value, …
     * @throws IllegalArgumentException if the key or a hole's value is missing
     */
    public String say(String key, Object... holes) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalArgumentException("no words for '" + key + "' in " + language);
        }
        if (text.indexOf('{') < 0) {
            return text;
        }
        Matcher hole = HOLE.matcher(text);
        StringBuilder said = new StringBuilder();
        while (hole.find()) {
            hole.appendReplacement(said, Matcher.quoteReplacement(value(hole.group(1), key, holes)));
        }
        return hole.appendTail(said).toString();
    }

    /** The text for a number of things, by the plural forms of the language ({@link Plurals}), with {n} filled. */
    public String count(String key, long number, Object... holes) {
        Object[] all = java.util.Arrays.copyOf(holes, holes.length + 2);
        all[holes.length] = "n";
        all[holes.length + 1] = number;
        return say(key + "." + Plurals.form(language, number), all);
    }

    /** A unit that is a word, in all plural forms of the language. */
    public CountedUnit counted(String key) {
        return new CountedUnit(Stream.concat(Stream.of(language), Plurals.forms(language).stream()
                .flatMap(form -> Stream.of(form, texts.get(key + "." + form)))).toList());
    }

    /** How often something is done: once, 3 times. */
    public String times(long number) {
        return count("count.times", number);
    }

    /** Several things in a row, with the comma of the language between them. */
    public String list(Collection<String> things) {
        return String.join(say("list.comma"), things);
    }

    /** What something is, and more of it, with the colon of the language between them. */
    public String more(String what, String more) {
        return what + say("list.colon") + more;
    }

    /** The word for one of a closed list, such as a kind of step; the trade word itself where none is given. */
    public String term(String group, String word) {
        String key = group + "." + word.replace(' ', '-');
        return has(key) ? say(key) : word;
    }

    /** What a result measures: as a translated case tells it, else as the program does. */
    public String measure(MeasureName measure) {
        return measure.told().equals(measure.word()) ? term("measure", measure.word()) : measure.told();
    }

    /** What stands on a page in the place of a value; why, where the author says so. */
    public String missing(MissingValue missing) {
        String key = "missing." + missing.kind().word().replace(' ', '-');
        return missing.why().map(why -> say(key + "-because", "why", why)).orElseGet(() -> say(key));
    }

    /** The same where nothing at all may be said of why; it is then not recorded, or not in what was read. */
    public String missing(Optional<MissingValue> missing) {
        return missing.map(this::missing).orElseGet(this::notRecorded);
    }

    /** A text of the case file, or what stands on a page where it says that there is nothing to tell. */
    public String told(String text) {
        return MissingValue.read(text).map(this::missing).orElse(text);
    }

    /** What stands in the place of a time that nobody told. */
    public String untimed(Optional<MissingValue> missing) {
        return say("missing.time", "missing", missing(missing));
    }

    public String notRecorded() {
        return say("missing.left-out");
    }

    /** Every text whose key begins with the group, by the rest of its key: the fixed labels of a block. */
    public Map<String, String> group(String group) {
        return groups.computeIfAbsent(group, this::collected);
    }

    private Map<String, String> collected(String group) {
        Map<String, String> labels = new TreeMap<>();
        String start = group + ".";
        texts.forEach((key, text) -> {
            if (key.startsWith(start) && !HOLE.matcher(text).find()) {
                labels.put(key.substring(start.length()), text);
            }
        });
        if (labels.isEmpty()) {
            throw new IllegalArgumentException("no words for the group '" + group + "' in " + language);
        }
        return Collections.unmodifiableMap(labels);
    }

    private static String value(String name, String key, Object... pairs) {
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            if (pairs[i].equals(name)) {
                return String.valueOf(pairs[i + 1]);
            }
        }
        throw new IllegalArgumentException("no value for {" + name + "} of '" + key + "'");
    }
}

package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Confidential;
import org.benchleaf.publish.SiteFile;

/**
 * Finds private values in the sources of a case and in the finished files of a site: in text, attributes, data, file names
 * and inside pictures.
 *
 * <p>All spellings of all values are looked for at once, in one pass of a {@link WordFinder} over each reading of a file. The
 * values never appear in a message. May be used from several threads.
 */
public final class PrivateScan {

    private static final int SHORTEST_ENCODED = 4;
    private static final int MOST_PLACES = 20;
    /** Behind all lines: a place that is known is told before one that is not. */
    private static final int NO_LINE = Integer.MAX_VALUE;

    private final List<Sought> all;
    private final Messages messages;

    private PrivateScan(List<Sought> all, Messages messages) {
        this.all = List.copyOf(all);
        this.messages = messages;
    }

    /**
     * Values that are looked for.
     *
     * @param needles by their folded letters
     * @param encoded by the value as UTF-16, seen as single bytes
     * @param folded finds the folded letters
     * @param inBytes without the short ones: among the bytes of a picture, "Bay 3" turns up by chance in one of two hundred
     * @param exact finds the encoded values
     * @param except the case whose values are not looked for; empty to look for those of all
     */
    private record Sought(Map<String, List<Needle>> needles, Map<String, List<Needle>> encoded, WordFinder folded,
            WordFinder inBytes, WordFinder exact, String except) {

        static Sought of(Map<String, List<Needle>> needles, Map<String, List<Needle>> encoded) {
            return new Sought(needles, encoded, new WordFinder(needles.keySet()), new WordFinder(needles.keySet().stream()
                    .filter(letters -> letters.length() >= Needle.LONG_ENOUGH).toList()), new WordFinder(encoded.keySet()), "");
        }

        Sought without(String caseId) {
            return new Sought(needles, encoded, folded, inBytes, exact, caseId);
        }

        List<Needle> counted(List<Needle> found) {
            return except.isEmpty() ? found : found.stream().filter(needle -> !needle.caseId().equals(except)).toList();
        }
    }

    /**
     * Looks for every form of one case's values: in that case's own words and files.
     *
     * @param studioName which stands on every page by the studio's own will: a name of someone who works there that stands in
     *        it is not looked for; empty if there is none
     */
    public static PrivateScan ofCase(String caseId, Confidential confidential, String studioName) {
        Needles facts = FactReader.read(caseId, confidential);
        Map<String, List<Needle>> needles = new HashMap<>();
        put(facts, studioName, Optional::of, needles);
        return new PrivateScan(List.of(Sought.of(needles, encoded(caseId, facts, studioName))), facts.messages());
    }

    /**
     * Looks for whole names and whole values of many cases, in what belongs to another case or to none: a part of a name
     * may be somebody else's by chance.
     *
     * @param byCase the private values, by the case's id
     * @param studioName as in {@link #ofCase}
     */
    public static PrivateScan ofAll(Map<String, Confidential> byCase, String studioName) {
        return of(byCase, studioName, Needle::inAnotherCase);
    }

    /**
     * Looks in the sources of what cases share for whole names and values of all cases, and for parts of a name beside a title,
     * a given name or initials, also of those who work there.
     *
     * @param byCase the private values, by the case's id
     * @param studioName as in {@link #ofCase}
     */
    public static PrivateScan ofShared(Map<String, Confidential> byCase, String studioName) {
        return of(byCase, studioName, Needle::inSharedFile);
    }

    private static PrivateScan of(Map<String, Confidential> byCase, String studioName,
            Function<Needle, Optional<Needle>> form) {
        Map<String, List<Needle>> needles = new HashMap<>();
        byCase.forEach((caseId, confidential) -> put(FactReader.read(caseId, confidential), studioName, form, needles));
        return new PrivateScan(List.of(Sought.of(needles, Map.of())), new Messages());
    }

    private static void put(Needles facts, String studioName, Function<Needle, Optional<Needle>> form,
            Map<String, List<Needle>> needles) {
        String open = Folded.letters(studioName);
        facts.spellings().stream().map(form).flatMap(Optional::stream)
                .filter(needle -> !isOpen(needle.field(), needle.letters(), open)).forEach(needle ->
                        needles.computeIfAbsent(needle.letters(), letters -> new ArrayList<>(1)).add(needle));
    }

    private static Map<String, List<Needle>> encoded(String caseId, Needles facts, String studioName) {
        String open = Folded.letters(studioName);
        Map<String, List<Needle>> encoded = new HashMap<>();
        facts.texts().forEach((text, field) -> encodings(text).stream()
                .filter(form -> !isOpen(field, Folded.letters(text), open)).forEach(form ->
                        encoded.putIfAbsent(form, List.of(new Needle(form, caseId, field, true, spot -> true)))));
        return encoded;
    }

    private static boolean isOpen(String field, String letters, String open) {
        return field.equals(Confidential.PEOPLE) && open.contains(letters);
    }

    /** Looks in one scan for these values and for others. */
    public PrivateScan with(PrivateScan others) {
        return new PrivateScan(Stream.concat(all.stream(), others.all.stream()).toList(), messages);
    }

    /** Looks for the same values without those of one case. */
    public PrivateScan without(String caseId) {
        return new PrivateScan(all.stream().map(sought -> sought.without(caseId)).toList(), messages);
    }

    /** Private values that cannot be looked for as they are written, and names that the author is asked about. */
    public Messages messages() {
        return messages;
    }

    /**
     * Every leak in one finished file, each private field once, at the first place found; empty if there is none.
     *
     */
    public List<Message> scan(Searchable searched) {
        return new Search(searched.file().path()).file(searched);
    }

    /**
     * Every leak in one source file, each private field once for each line, with line and column; of more than
     * twenty lines the first, the last of which tells how many more there are.
     *
     * @param source the text without its private values
     */
    public List<Message> scanSource(SourceText source) {
        String text = OpenText.of(source);
        Map<Field, SortedMap<Integer, Find>> found = finds(source.file(), text);
        Set<Field> hidden = found.entrySet().stream().filter(each -> each.getValue().containsKey(NO_LINE))
                .map(Map.Entry::getKey).collect(Collectors.toSet());
        if (!hidden.isEmpty()) {
            placeHidden(source.file(), text, hidden, found);
        }
        return found.entrySet().stream().flatMap(each -> told(source.file(), each.getKey(), each.getValue())).toList();
    }

    /** What shows only when escapes are undone is placed by the lines that show it alone. */
    private void placeHidden(String file, String text, Set<Field> hidden, Map<Field, SortedMap<Integer, Find>> found) {
        String[] lines = text.split("\n", -1);
        for (int line = 0; line < lines.length; line++) {
            int number = line + 1;
            finds(file, lines[line]).forEach((field, here) -> {
                if (hidden.contains(field)) {
                    found.get(field).putIfAbsent(number, new Find(1, here.get(here.lastKey()).where()));
                }
            });
        }
        hidden.stream().map(found::get).filter(places -> places.size() > 1).forEach(places -> places.remove(NO_LINE));
    }

    private Map<Field, SortedMap<Integer, Find>> finds(String file, String text) {
        Search search = new Search(file);
        search.all(text.getBytes(StandardCharsets.UTF_8), true, Searchable.of(SiteFile.text(file, text)).readings(), "");
        return search.found;
    }

    private static Stream<Message> told(String file, Field field, SortedMap<Integer, Find> places) {
        List<Message> told = new ArrayList<>();
        for (Map.Entry<Integer, Find> place : places.entrySet()) {
            if (told.size() < MOST_PLACES) {
                int more = told.size() + 1 == MOST_PLACES ? places.size() - MOST_PLACES : 0;
                told.add(message(field, file, place.getKey(), place.getValue(), "the words of this file, ", more));
            }
        }
        return told.stream();
    }

    private static Message message(Field field, String file, int line, Find find, String kind, int more) {
        // The file's text is kept out of the message, since the excerpt would repeat the value.
        Place place = line == NO_LINE ? Place.file(file) : Place.at(new SourceText(file, ""), line, find.column());
        return LeakMessages.PRIVATE_VALUE.at(place, "field", field.name(), "case", field.caseId(), "where",
                "in " + kind + find.where() + (more == 0 ? "" : ", and on " + more + (more == 1 ? " line" : " lines") + " after this one"));
    }

    /** A private field of a case. */
    private record Field(String caseId, String name) {
    }

    /** Where on its line, and in which reading, a private field was found. */
    private record Find(int column, String where) {
    }

    /** One search through one file: the private fields that it found, by line; {@link #NO_LINE} where the line is not known. */
    private final class Search {

        private final String path;
        private final Map<Field, SortedMap<Integer, Find>> found = new LinkedHashMap<>();

        Search(String path) {
            this.path = path;
        }

        List<Message> file(Searchable searched) {
            SiteFile file = searched.file();
            search(Sought::folded, Searchable.Read.of(path), "in the file's name", false);
            all(file.bytes(), searched.isText(), searched.readings(), "");
            for (Unpacked.Inner inner : Unpacked.of(file.bytes())) {
                search(Sought::folded, Searchable.Read.of(inner.name()), "in the name of a file packed inside", false);
                if (!searched.isElsewhere(inner)) {
                    all(inner.bytes(), Readings.isText(inner.bytes()), searched.readings(inner), "packed inside, ");
                }
            }
            List<Message> told = new ArrayList<>();
            found.forEach((field, places) -> told.add(message(field, path, places.firstKey(),
                    places.get(places.firstKey()), "a file of the site, ", 0)));
            PictureBlocks.forbidden(file.bytes()).ifPresent(block ->
                    told.add(LeakMessages.PICTURE_METADATA.at(Place.file(path), "block", block)));
            return told;
        }

        private void all(byte[] bytes, boolean text, List<Searchable.Read> readings, String prefix) {
            for (Searchable.Read reading : readings) {
                String where = prefix + (reading.how().isEmpty() ? "in its text" : reading.how());
                search(text ? Sought::folded : Sought::inBytes, reading, where, text && reading.how().isEmpty() && prefix.isEmpty());
            }
            if (!text) {
                char[] single = new String(bytes, StandardCharsets.ISO_8859_1).toCharArray();
                all.forEach(sought -> sought.exact().find(single, (start, word) ->
                        sought.counted(sought.encoded().get(word)).forEach(needle ->
                                note(needle, prefix + "inside its bytes, as UTF-16"))));
            }
        }

        private void search(Function<Sought, WordFinder> finder, Searchable.Read reading, String where,
                boolean placed) {
            Folded letters = reading.letters();
            Folded.Places at = letters.places();
            LineCount lines = new LineCount(reading.text());
            char[] signs = letters.letters().toCharArray();
            all.forEach(sought -> finder.apply(sought).find(signs, (start, word) -> {
                for (Needle needle : sought.counted(sought.needles().get(word))) {
                    Spot spot = at.spot(start, start + word.length());
                    if (needle.evidence().counts(spot)) {
                        if (placed) {
                            int line = lines.lineOf(spot.start());
                            places(needle).putIfAbsent(line, new Find(lines.columnOf(spot.start()), where));
                        } else {
                            note(needle, where);
                        }
                    }
                }
            }));
        }

        /** A find whose line is not known. */
        private void note(Needle needle, String where) {
            places(needle).putIfAbsent(NO_LINE, new Find(1, where));
        }

        private SortedMap<Integer, Find> places(Needle needle) {
            return found.computeIfAbsent(new Field(needle.caseId(), needle.field()), first -> new TreeMap<>());
        }
    }

    /** The value as it looks as UTF-16, seen as single bytes. */
    private static Set<String> encodings(String value) {
        return value.length() < SHORTEST_ENCODED ? Set.of()
                : Set.of(new String(value.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1),
                        new String(value.getBytes(StandardCharsets.UTF_16BE), StandardCharsets.ISO_8859_1));
    }
}

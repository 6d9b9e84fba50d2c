package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
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
        return of(Map.of(caseId, confidential), studioName, false);
    }

    /**
     * Looks for whole names and whole values of many cases, in what belongs to another case or to none: a part of a name
     * may be somebody else's by chance.
     *
     * @param byCase the private values, by the case's id
     * @param studioName as in {@link #ofCase}
     */
    public static PrivateScan ofAll(Map<String, Confidential> byCase, String studioName) {
        return of(byCase, studioName, true);
    }

    private static PrivateScan of(Map<String, Confidential> byCase, String studioName, boolean wholeOnly) {
        String open = Folded.letters(studioName);
        Map<String, List<Needle>> needles = new HashMap<>();
        Map<String, List<Needle>> encoded = new HashMap<>();
        Messages messages = new Messages();
        byCase.forEach((caseId, confidential) -> {
            Needles facts = FactReader.read(caseId, confidential);
            facts.spellings().stream().filter(needle -> needle.isWhole() || !wholeOnly)
                    .filter(needle -> !isOpen(needle.field(), needle.letters(), open)).forEach(needle ->
                            needles.computeIfAbsent(needle.letters(), letters -> new ArrayList<>(1)).add(needle));
            if (!wholeOnly) {
                messages.addAll(facts.messages());
                facts.texts().forEach((text, field) -> encodings(text).stream()
                        .filter(form -> !isOpen(field, Folded.letters(text), open)).forEach(form ->
                                encoded.putIfAbsent(form, List.of(new Needle(form, caseId, field, true, spot -> true)))));
            }
        });
        return new PrivateScan(List.of(Sought.of(needles, encoded)), messages);
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
        return new Search(searched.file().path(), "a file of the site, ").file(searched);
    }

    /**
     * Every leak in one source file, each private field once, with its line and column.
     *
     * @param source the text without its private values
     */
    public List<Message> scanSource(SourceText source) {
        String text = OpenText.of(source);
        List<Message> found = new Search(source.file(), "the words of this file, ")
                .text(Searchable.of(SiteFile.text(source.file(), text)));
        return found.stream().map(message -> message.place().line() > 0 ? message : placed(message, source, text)).toList();
    }

    /** What shows only when escapes are undone, placed by the first line that shows it alone. */
    private Message placed(Message message, SourceText source, String text) {
        String[] lines = text.split("\n", -1);
        for (int line = 0; line < lines.length; line++) {
            List<Message> here = new Search(source.file(), "the words of this file, ")
                    .text(Searchable.of(SiteFile.text(source.file(), lines[line])));
            if (here.stream().anyMatch(one -> one.what().equals(message.what()))) {
                return new Message(message.id(), Place.at(new SourceText(source.file(), ""), line + 1, 1), message.what(),
                        message.why(), message.fix());
            }
        }
        return message;
    }

    /** One search through one file. */
    private final class Search {

        private final String path;
        private final String kind;
        private final Map<String, Message> found = new LinkedHashMap<>();

        Search(String path, String kind) {
            this.path = path;
            this.kind = kind;
        }

        List<Message> file(Searchable searched) {
            SiteFile file = searched.file();
            search(Sought::folded, Searchable.Read.of(path), "in the file's name", false);
            all(file.bytes(), searched.isText(), searched.readings(), "");
            for (Unpacked.Inner inner : Unpacked.of(file.bytes())) {
                search(Sought::folded, Searchable.Read.of(inner.name()), "in the name of a file packed inside", false);
                boolean text = Searchable.isText(inner.bytes());
                all(inner.bytes(), text, Searchable.readings(inner.bytes(), text), "packed inside, ");
            }
            PictureBlocks.forbidden(file.bytes()).ifPresent(block ->
                    found.put("", LeakMessages.PICTURE_METADATA.at(Place.file(path), "block", block)));
            return List.copyOf(found.values());
        }

        List<Message> text(Searchable searched) {
            all(searched.file().bytes(), true, searched.readings(), "");
            return List.copyOf(found.values());
        }

        private void all(byte[] bytes, boolean text, List<Searchable.Read> readings, String prefix) {
            for (Searchable.Read reading : readings) {
                String where = prefix + (reading.how().isEmpty() ? "in its text" : reading.how());
                search(text ? Sought::folded : Sought::inBytes, reading, where, text && reading.how().isEmpty() && prefix.isEmpty());
            }
            if (!text) {
                String single = new String(bytes, StandardCharsets.ISO_8859_1);
                all.forEach(sought -> sought.exact().find(single, (start, word) ->
                        sought.counted(sought.encoded().get(word)).forEach(needle ->
                                note(needle, () -> Place.file(path), prefix + "inside its bytes, as UTF-16"))));
            }
        }

        private void search(Function<Sought, WordFinder> finder, Searchable.Read reading, String where,
                boolean placed) {
            Folded letters = reading.letters();
            all.forEach(sought -> finder.apply(sought).find(letters.letters(), (start, word) -> {
                for (Needle needle : sought.counted(sought.needles().get(word))) {
                    Spot spot = letters.spot(start, start + word.length());
                    if (needle.evidence().counts(spot)) {
                        note(needle, () -> placed ? place(path, reading.text(), spot.start()) : Place.file(path), where);
                    }
                }
            }));
        }

        /** Tells a find, once for each private field; only then its place is counted. */
        private void note(Needle needle, Supplier<Place> place, String where) {
            found.computeIfAbsent(needle.caseId() + '/' + needle.field(), first -> LeakMessages.PRIVATE_VALUE.at(place.get(),
                    "field", needle.field(), "case", needle.caseId(), "where", "in " + kind + where));
        }
    }

    /** Line and column; the file's text is kept out of the message, since the excerpt would repeat the value. */
    private static Place place(String path, String text, int offset) {
        int line = 1;
        int lineStart = 0;
        for (int at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', at + 1)) {
            line++;
            lineStart = at + 1;
        }
        return Place.at(new SourceText(path, ""), line, offset - lineStart + 1);
    }

    /** The value as it looks as UTF-16, seen as single bytes. */
    private static Set<String> encodings(String value) {
        return value.length() < SHORTEST_ENCODED ? Set.of()
                : Set.of(new String(value.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1),
                        new String(value.getBytes(StandardCharsets.UTF_16BE), StandardCharsets.ISO_8859_1));
    }
}

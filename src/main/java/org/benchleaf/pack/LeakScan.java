package org.benchleaf.pack;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Confidential;
import org.benchleaf.publish.SiteFile;

/**
 * Finds private values in the finished files of a site: in text, attributes, data, file names and inside pictures.
 *
 * <p>All spellings of all values are looked for at once by a {@link WordFinder}, in each of the readings of a file. The
 * values never appear in a message. May be used from several threads.
 */
public final class LeakScan {

    private static final Pattern MONEY = Pattern.compile(
            "(?i)[£$€¥]|\\b(?:GBP|USD|EUR|CHF|JPY|AUD|CAD)|\\b(?:valued|valuation|worth|pric|paid|pay|insur|estimat|apprais|cost|sold|sale|"
                    + "invoice|valor|precio|seguro|tasaci|wert|preis|prix|assur)");
    private static final int MONEY_REACH = 40;
    private static final Pattern SUM = Pattern.compile("\\d+([ ,.'’\\u00A0\\u2009\\u202F]\\d{3})*([.,]\\d{2})?");
    private static final int SHORTEST_ENCODED = 6;

    private final Map<String, List<Needle>> needles = new HashMap<>();
    private final Map<String, Needle> encoded = new HashMap<>();
    private final WordFinder folded;
    /** Without the short ones: among the bytes of a picture, "Bay 3" turns up by chance in one of two hundred. */
    private final WordFinder inBytes;
    private final WordFinder exact;

    /**
     * Makes ready for a search.
     *
     * @param byCase the private values of every case, by the case's id
     */
    public LeakScan(Map<String, Confidential> byCase) {
        byCase.forEach((caseId, confidential) -> confidential.secrets().forEach(secret -> {
            Needle.of(caseId, secret).forEach(needle ->
                    needles.computeIfAbsent(needle.letters(), letters -> new ArrayList<>()).add(needle));
            encodings(secret.value().strip()).forEach(text -> encoded.putIfAbsent(text,
                    new Needle(text, caseId, secret.field(), Needle.How.ANYWHERE)));
        }));
        this.folded = new WordFinder(needles.keySet());
        this.inBytes = new WordFinder(needles.keySet().stream()
                .filter(letters -> letters.length() >= Needle.LONG_ENOUGH).toList());
        this.exact = new WordFinder(encoded.keySet());
    }

    /** Every leak in one file, each private field once, at the first place found; empty if there is none. */
    public List<Message> scan(Searchable searched) {
        SiteFile file = searched.file();
        Map<String, Message> found = new LinkedHashMap<>();
        search(folded, file.path(), Searchable.Read.of(file.path()), "in the file's name", false, found);
        searchAll(file.path(), file.bytes(), searched.isText(), searched.readings(), "", found);
        for (Unpacked.Inner inner : Unpacked.of(file.bytes())) {
            search(folded, file.path(), Searchable.Read.of(inner.name()), "in the name of a file packed inside", false,
                    found);
            boolean text = Searchable.isText(inner.bytes());
            searchAll(file.path(), inner.bytes(), text, Searchable.readings(inner.bytes(), text), "packed inside, ", found);
        }
        PictureBlocks.forbidden(file.bytes()).ifPresent(block ->
                found.put("", LeakMessages.PICTURE_METADATA.at(Place.file(file.path()), "block", block)));
        return List.copyOf(found.values());
    }

    private void searchAll(String path, byte[] bytes, boolean text, List<Searchable.Read> readings, String prefix,
            Map<String, Message> found) {
        for (Searchable.Read reading : readings) {
            String where = prefix + (reading.how().isEmpty() ? "in its text" : reading.how());
            boolean placed = text && reading.how().isEmpty() && prefix.isEmpty();
            search(text ? folded : inBytes, path, reading, where, placed, found);
        }
        String single = text ? readings.get(0).text() : new String(bytes, StandardCharsets.ISO_8859_1);
        exact.find(single, (start, word) -> note(encoded.get(word), Place.file(path), prefix + "encoded", found));
    }

    private void search(WordFinder finder, String path, Searchable.Read reading, String where, boolean placed,
            Map<String, Message> found) {
        Folded letters = reading.letters();
        finder.find(letters.letters(), (start, word) -> {
            Spot spot = letters.spot(start, start + word.length());
            for (Needle needle : needles.get(word)) {
                if (counts(needle, spot)) {
                    Place place = placed ? place(path, reading.text(), spot.start()) : Place.file(path);
                    note(needle, place, where, found);
                }
            }
        });
    }

    private static boolean counts(Needle needle, Spot spot) {
        return switch (needle.how()) {
            case ANYWHERE -> true;
            case WHOLE_WORDS -> spot.isWhole();
            case NEAR_MONEY -> spot.isWhole() && isOneNumber(spot) && MONEY.matcher(spot.around(MONEY_REACH)).find();
        };
    }

    /** Whether it is a number as people write sums of money, and not the decimals of a longer one. */
    private static boolean isOneNumber(Spot spot) {
        boolean decimals = spot.start() > 1 && ".,".indexOf(spot.text().charAt(spot.start() - 1)) >= 0
                && Character.isDigit(spot.text().charAt(spot.start() - 2));
        return !decimals && SUM.matcher(spot.written()).matches();
    }

    /** Tells a find, once for each private field. */
    static void note(Needle needle, Place place, String where, Map<String, Message> found) {
        found.putIfAbsent(needle.caseId() + '/' + needle.field(), LeakMessages.PRIVATE_VALUE.at(place,
                "field", needle.field(), "case", needle.caseId(), "where", where));
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

    /** The value as it looks in base64, whatever stands before it, and as UTF-16, seen as single bytes. */
    private static Set<String> encodings(String value) {
        Set<String> forms = new LinkedHashSet<>();
        byte[] bytes = value.getBytes(StandardCharsets.UTF_8);
        if (bytes.length < SHORTEST_ENCODED) {
            return forms;
        }
        for (int shift = 0; shift < 3; shift++) {
            byte[] shifted = new byte[bytes.length + shift];
            System.arraycopy(bytes, 0, shifted, shift, bytes.length);
            String whole = Base64.getEncoder().withoutPadding().encodeToString(shifted);
            // The first and last signs also depend on what stands beside the value.
            String sure = whole.substring(shift == 0 ? 0 : shift + 1, (shifted.length / 3) * 4);
            forms.add(sure);
            forms.add(sure.replace('+', '-').replace('/', '_'));
        }
        forms.add(new String(value.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1));
        forms.add(new String(value.getBytes(StandardCharsets.UTF_16BE), StandardCharsets.ISO_8859_1));
        return forms;
    }
}

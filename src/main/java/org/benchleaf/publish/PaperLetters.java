package org.benchleaf.publish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The letters of sheets on paper: four faces of one family, which stand inside each file. */
final class PaperLetters {

    private static final String FAMILY = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed";
    private static final Map<String, String> FACES = new TreeMap<>(Map.of(
            "plain", FAMILY + ".ttf", "bold", FAMILY + "-Bold.ttf",
            "plain italic", FAMILY + "-Oblique.ttf", "bold italic", FAMILY + "-BoldOblique.ttf"));
    private static final int COMMA = 0x060C;
    private static final int SEMICOLON = 0x061B;
    private static final int QUESTION_MARK = 0x061F;
    private static final int FIRST_MARK = 0x064B;
    private static final int LAST_MARK = 0x0652;
    private static final List<CmapLookup> KNOWN = new ArrayList<>();

    private PaperLetters() {
    }

    /** The file of a face. */
    static InputStream face(boolean isBold, boolean isItalic) {
        return PaperLetters.class.getResourceAsStream(FACES.get((isBold ? "bold" : "plain") + (isItalic ? " italic" : "")));
    }

    /**
     * The first letter that cannot be printed: a face does not have it, or it is of a script that runs from right to left and is not
     * Arabic, whose letters may be joined and ordered by rules that the layout does not know.
     */
    static Optional<String> missing(String text) {
        return text.codePoints().filter(letter -> !Character.isWhitespace(letter) && !Character.isISOControl(letter)
                && Character.getType(letter) != Character.FORMAT).filter(letter -> !isKnown(letter))
                .mapToObj(Character::toString).findFirst();
    }

    private static boolean isKnown(int letter) {
        byte direction = Character.getDirectionality(letter);
        if (direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC) {
            return ArabicLetters.has(letter) || letter == SEMICOLON || letter == QUESTION_MARK;
        }
        return known().stream().allMatch(face -> face.getGlyphId(letter) != 0) || isArabicSign(letter);
    }

    /** A sign of Arabic script, which the upright faces have. */
    private static boolean isArabicSign(int letter) {
        return letter == COMMA || letter >= FIRST_MARK && letter <= LAST_MARK;
    }

    private static synchronized List<CmapLookup> known() {
        if (KNOWN.isEmpty()) {
            FACES.values().forEach(face -> KNOWN.add(letters(face)));
        }
        return KNOWN;
    }

    private static CmapLookup letters(String face) {
        try (InputStream file = PaperLetters.class.getResourceAsStream(face);
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            return font.getUnicodeCmapLookup();
        } catch (IOException broken) {
            throw new UncheckedIOException("the letters " + face + " cannot be read", broken);
        }
    }
}

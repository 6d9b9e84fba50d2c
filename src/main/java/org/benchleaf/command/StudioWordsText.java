package org.benchleaf.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.json.JsonText;
import org.benchleaf.read.StudioWordsFile;
import org.benchleaf.read.TranslationFile;
import org.benchleaf.read.YamlText;

/** Writes the file of a studio's words in another language: each text of its files as a key, in their order. */
final class StudioWordsText {

    /** The longest key that YAML allows without its own sign (YAML 1.2.2, section 7.4.2). */
    private static final int LONGEST_KEY = 1024;
    private static final String INDENT = "  ";

    private final StudioWordsUpdate update;
    private final OriginalWords shown;
    private final List<String> head;

    /**
     * Prepares to write.
     *
     * @param head comments above all, each without its sign
     */
    StudioWordsText(StudioWordsUpdate update, OriginalWords shown, List<String> head) {
        this.update = update;
        this.shown = shown;
        this.head = head;
    }

    /** The whole file. */
    String text() {
        List<String> lines = new ArrayList<>();
        head.forEach(note -> lines.add("#" + note));
        Map<String, String> groups = update.groups();
        String last = "";
        for (Map.Entry<String, String> entry : groups.entrySet()) {
            StudioWordsUpdate.Told told = update.at(entry.getKey());
            if (!entry.getValue().equals(last)) {
                lines.addAll(last.isEmpty() ? List.of() : List.of(""));
                notes(told, lines);
                lines.add("#" + StudioWordsUpdate.HEAD + entry.getValue());
                last = entry.getValue();
            } else {
                notes(told, lines);
            }
            lines.addAll(text(entry.getKey(), told));
        }
        update.closing().forEach(note -> lines.add("#" + note));
        lines.addAll(kept());
        lines.addAll(madeFrom());
        return String.join("\n", lines) + "\n";
    }

    private static void notes(StudioWordsUpdate.Told told, List<String> lines) {
        told.notes().forEach(note -> lines.add("#" + note));
    }

    private List<String> text(String text, StudioWordsUpdate.Told told) {
        List<String> lines = new ArrayList<>();
        if (!told.before().isEmpty()) {
            shown.inYaml(told.before(), true).forEach(line -> lines.add("#" + line));
        }
        String key = YamlText.onLine(text);
        if (key.length() > LONGEST_KEY) {
            lines.add("? " + key);
            lines.addAll(OriginalWords.value(": ", INDENT + INDENT, told.words()));
        } else {
            lines.addAll(OriginalWords.value(key + ": ", INDENT + INDENT, told.words()));
        }
        return lines;
    }

    private List<String> kept() {
        List<String> lines = new ArrayList<>();
        update.kept().forEach(words -> {
            lines.addAll(lines.isEmpty() ? List.of("", StudioWordsFile.NO_LONGER + ":") : List.of());
            notes(words.told(), lines);
            lines.addAll(OriginalWords.value("- was: ", INDENT + INDENT, words.was()));
            lines.addAll(OriginalWords.value("  words: ", INDENT + INDENT, words.told().words()));
        });
        return lines;
    }

    private List<String> madeFrom() {
        List<String> lines = new ArrayList<>();
        update.marks().forEach((address, mark) -> {
            lines.addAll(lines.isEmpty() ? List.of("", TranslationFile.MADE_FROM + ":") : List.of());
            lines.add(INDENT + YamlText.onLine(address) + ": " + JsonText.of(mark));
        });
        return lines;
    }
}

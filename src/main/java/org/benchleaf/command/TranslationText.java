package org.benchleaf.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.read.TranslationFile;
import org.benchleaf.read.YamlText;

/** Writes the file of a translation: each text of the case in its order, the words of the case above it in a comment. */
final class TranslationText {

    /** Lists and groups are told apart by their keys; of these some have no text, and stand in a group with their numbers as keys. */
    private static final Set<String> NUMBERED_GROUPS = Set.of("condition", "tests", "results", "readings", "versions", "amendments");
    private static final Pattern ITEM = Pattern.compile("\\d++");
    private static final Pattern ID = Pattern.compile("[A-Za-z][A-Za-z0-9-]*+");
    private static final String INDENT = "  ";

    private final TranslationUpdate update;
    private final OriginalWords shown;
    private final String opening;

    /**
     * Prepares to write.
     *
     * @param opening comments above the first section of the story
     */
    TranslationText(TranslationUpdate update, OriginalWords shown, String opening) {
        this.update = update;
        this.shown = shown;
        this.opening = opening;
    }

    /** The whole file. */
    String text() {
        List<String> lines = new ArrayList<>(List.of("---"));
        lines.addAll(keys(tree(), ""));
        update.closing().forEach(note -> lines.add("#" + note));
        lines.addAll(kept());
        lines.add("");
        lines.add(TranslationFile.MADE_FROM + ":");
        update.originals().keySet()
                .forEach(address -> lines.add(INDENT + YamlText.onLine(address) + ": " + JsonText.of(update.at(address).mark())));
        lines.add("---");
        String story = Stream.concat(Stream.of(opening), addresses(true).map(this::section)).filter(part -> !part.isEmpty())
                .collect(Collectors.joining("\n\n"));
        return String.join("\n", lines) + "\n" + (story.isEmpty() ? "" : "\n" + story + "\n");
    }

    private Stream<String> addresses(boolean ofStory) {
        return update.originals().keySet().stream().filter(address -> CaseTexts.isOfStory(address) == ofStory);
    }

    /** The keys of the texts in groups; at the end of each way the address of a text. */
    private Map<String, Object> tree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        addresses(false).forEach(address -> {
            String[] keys = address.split("\\.");
            Map<String, Object> group = tree;
            for (int at = 0; at < keys.length - 1; at++) {
                group = inner(group, keys[at]);
            }
            group.put(keys[keys.length - 1], address);
        });
        return tree;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> inner(Map<String, Object> group, String key) {
        return (Map<String, Object>) group.computeIfAbsent(key, each -> new LinkedHashMap<String, Object>());
    }

    private List<String> group(Map<String, Object> group, String name, String indent) {
        boolean isList = !NUMBERED_GROUPS.contains(name) && group.keySet().stream().allMatch(key -> ITEM.matcher(key).matches());
        return isList ? list(group, indent) : keys(group, indent);
    }

    private List<String> keys(Map<String, Object> group, String indent) {
        List<String> lines = new ArrayList<>();
        group.forEach((key, value) -> {
            if (indent.isEmpty() && !lines.isEmpty()) {
                lines.add("");
            }
            if (value instanceof String address) {
                lines.addAll(text(update.at(address), update.originals().get(address), indent, YamlText.onLine(key) + ": "));
            } else {
                lines.add(indent + YamlText.onLine(key) + ":");
                lines.addAll(group(inner(group, key), key, indent + INDENT));
            }
        });
        return lines;
    }

    /** An item that is no text, such as a number, keeps its place empty. */
    private List<String> list(Map<String, Object> group, String indent) {
        List<String> lines = new ArrayList<>();
        int last = group.keySet().stream().mapToInt(Integer::parseInt).max().orElse(0);
        for (int item = 1; item <= last; item++) {
            Object value = group.get(String.valueOf(item));
            if (value instanceof String address) {
                lines.addAll(text(update.at(address), update.originals().get(address), indent, "- "));
            } else if (value == null) {
                lines.add(indent + "- \"\"");
            } else {
                lines.addAll(item(group(inner(group, String.valueOf(item)), "", indent + INDENT), indent));
            }
        }
        return lines;
    }

    /** The first line of a group that is no comment begins the item. */
    private static List<String> item(List<String> group, String indent) {
        List<String> lines = new ArrayList<>(group);
        for (int at = 0; at < lines.size(); at++) {
            if (!lines.get(at).startsWith("#", indent.length() + INDENT.length())) {
                lines.set(at, indent + "- " + lines.get(at).substring(indent.length() + INDENT.length()));
                break;
            }
        }
        return lines;
    }

    private List<String> text(TranslatedWords words, String original, String indent, String lead) {
        List<String> lines = new ArrayList<>();
        words.notes().forEach(note -> lines.add(indent + "#" + note));
        if (!words.before().isEmpty()) {
            shown.inYaml(words.before(), true).forEach(line -> lines.add(indent + "#" + line));
        }
        shown.inYaml(original, false).forEach(line -> lines.add(indent + "#" + line));
        lines.addAll(OriginalWords.value(indent + lead, indent + INDENT, words.words()));
        return lines;
    }

    private List<String> kept() {
        List<String> lines = new ArrayList<>();
        update.kept().forEach(words -> {
            lines.addAll(lines.isEmpty() ? List.of("", TranslationFile.NO_LONGER + ":") : List.of());
            words.notes().forEach(note -> lines.add("#" + note));
            lines.addAll(OriginalWords.value("- was: ", INDENT, words.address()));
            lines.addAll(OriginalWords.value("  words: ", INDENT + INDENT, words.words()));
            if (!words.mark().isEmpty()) {
                lines.add("  " + TranslationFile.MADE_FROM + ": " + JsonText.of(words.mark()));
            }
        });
        return lines;
    }

    private String section(String address) {
        TranslatedWords words = update.at(address);
        String original = update.originals().get(address);
        return Stream.of(words.before().isEmpty() ? "" : shown.inMarkdown(address, words.before(), true),
                shown.inMarkdown(address, original, false),
                headed(address, words.areThere() ? words.words() : heading(address, original)))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining("\n\n"));
    }

    /** What the file has of a section that is not translated: its heading, so that the sections stay in step. */
    static String heading(String address, String original) {
        String first = original.lines().findFirst().orElse("");
        return CaseTexts.sectionId(address).isEmpty() ? "" : headed(address, first.startsWith("#") ? first : "## " + first);
    }

    /** Names the section in its heading, so that it stays that of the case whatever its words. */
    private static String headed(String address, String markdown) {
        String id = CaseTexts.sectionId(address).filter(each -> ID.matcher(each).matches()).orElse("");
        int end = markdown.indexOf('\n') < 0 ? markdown.length() : markdown.indexOf('\n');
        String line = markdown.substring(0, end).stripTrailing();
        String plain = line.endsWith("}") && line.contains(" {#") ? line.substring(0, line.lastIndexOf(" {#")).stripTrailing() : line;
        boolean named = !id.isEmpty() && plain.startsWith("#") && !plain.endsWith("#");
        return named ? plain + " {#" + id + "}" + markdown.substring(end) : markdown;
    }
}

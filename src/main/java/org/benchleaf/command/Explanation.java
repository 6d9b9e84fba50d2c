package org.benchleaf.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Catalogue;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Library;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;

/** Tells at length what the code of a message stands for, without a case that brings it out. */
final class Explanation {

    private static final String OF_RULE = "RULE-";
    private static final int COLUMN = 9;

    /** Warnings that keep pages back. */
    private static final Set<Message.Id> KEEPING_BACK = Set.of(ConsentMessages.SOURCE_FORBIDS, ConsentMessages.SOURCE_LICENCE_NOT_KNOWN);

    private final Library library;

    /** Explains by the rules of one studio. */
    Explanation(Library library) {
        this.library = library;
    }

    /** The lines that explain a code, upper or lower case; empty if no message has it. */
    Optional<List<String>> of(String code) {
        String asked = code.toUpperCase(Locale.ROOT);
        return Catalogue.all().stream().filter(id -> id.code().equals(asked)).findFirst().map(Explanation::entry)
                .or(() -> library.rules().stream().filter(rule -> code(rule.id()).equals(asked)).findFirst().map(this::rule))
                .or(() -> cells().entrySet().stream().filter(cell -> code(cell.getKey()).equals(asked)).findFirst()
                        .map(cell -> List.of(asked, cell.getValue())));
    }

    /** The code most like one that there is not. */
    Optional<String> near(String code) {
        return Nearest.to(code.toUpperCase(Locale.ROOT), Stream.of(Catalogue.all().stream().map(Message.Id::code),
                library.rules().stream().map(rule -> code(rule.id())), cells().keySet().stream().map(Explanation::code))
                .flatMap(codes -> codes).toList());
    }

    private static String code(String rule) {
        return OF_RULE + rule.toUpperCase(Locale.ROOT);
    }

    private static List<String> entry(Message.Id id) {
        return List.of(id.code() + ", " + id.severity().word() + ": " + weight(id), row("what", id.what()),
                row("why", id.why()), row("do", id.fix()), "Words in braces are filled in where the message is told.");
    }

    private static String weight(Message.Id id) {
        if (KEEPING_BACK.contains(id)) {
            return "what it names is not published; all else is.";
        }
        return switch (id.severity()) {
            case ERROR -> "nothing is published until it is put right, unless it stands in a draft.";
            case WARNING -> "it is published, but should be looked at.";
            case ADVICE -> "a hint.";
        };
    }

    private List<String> rule(Rule rule) {
        List<String> lines = new ArrayList<>(List.of(code(rule.id()) + ", a rule of the trade (" + rule.theme() + "): "
                + rule.statement(), row("weight", weight(rule.weight())), row("what", rule.what()),
                row("why", rule.why()), row("do", rule.fix())));
        Set<String> facts = rule.restsOn(CaseField::written);
        if (!facts.isEmpty()) {
            lines.add(row("facts", String.join("; ", facts)));
        }
        lines.add(row("source", source(rule.backing())));
        rule.change().ifPresent(change -> lines.add(row("changed", "by this studio: " + change.reason())));
        return lines;
    }

    private static String weight(Rule.Weight weight) {
        return switch (weight) {
            case STOP -> "the case is not published; no reason lifts it.";
            case REASON -> "the case is published only with a reason, recorded under 'reasons:'.";
            case ADVICE -> "advice; the author decides.";
        };
    }

    private String source(Rule.Backing backing) {
        String where = backing.sources().isEmpty() ? Rule.Backing.NO_SOURCE : backing.sources().stream().map(this::cited)
                .collect(Collectors.joining("; ")) + " (" + backing.status().words() + ")";
        return where + backing.note().map(note -> ". " + note).orElse("");
    }

    private String cited(String key) {
        return Optional.ofNullable(library.sources().get(key)).map(source -> Stream.of(source.author(), source.year(),
                source.title()).filter(part -> !part.isBlank()).collect(Collectors.joining(", "))).orElse(key);
    }

    private Map<String, String> cells() {
        return library.matrix().rows().stream().flatMap(row -> library.matrix().actions().stream().map(action ->
                        Map.entry(Matrix.cellId(row, action), row(row.name(), action.name() + ": "
                                + row.on(action.id()).words() + row.note().map(note -> ". " + note).orElse("")))))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, same) -> one));
    }

    private static String row(String name, String text) {
        return "  " + name + ":" + " ".repeat(Math.max(1, COLUMN - name.length())) + text;
    }
}

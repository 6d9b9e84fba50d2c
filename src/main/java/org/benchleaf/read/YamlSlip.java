package org.benchleaf.read;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says in our own words what keeps a text from being YAML. */
final class YamlSlip {

    /** What the parser says, what that means to an author, and what to do. */
    private record Wording(String heard, String problem, String remedy) {
    }

    private static final String SECOND_COLON = "mapping values are not allowed here";
    private static final List<Wording> WORDINGS = List.of(
            new Wording(SECOND_COLON, "A second ': ' stands on this line.",
                    "Put the whole text behind the first ': ' into double quotes, or check how far the line is indented."),
            new Wording("(TAB)", "A tab stands where only blanks may indent.",
                    "Replace the tab by two blanks."),
            new Wording("found unexpected end of stream", "A quote that was opened is never closed.",
                    "Close the quote on the line where the text ends."),
            new Wording("expected ',' or ']'", "A list that was opened with '[' is not closed, or a comma is missing.",
                    "Close the list with ']', and put text that holds a comma, bracket or brace into double quotes."),
            new Wording("expected ',' or '}'", "A group that was opened with '{' is not closed, or a comma is missing.",
                    "Close the group with '}', and put text that holds a comma, bracket or brace into double quotes."),
            new Wording("expected <block end>", "This line is indented differently from the lines it belongs to.",
                    "Indent it exactly like its neighbours above, with blanks."),
            new Wording("cannot start any token", "A value begins with a sign that has a meaning of its own in YAML.",
                    "Put the value into double quotes."),
            new Wording("alphabetic or numeric character", "A value begins with '&' or '*', which YAML reads as a mark.",
                    "Put the value into double quotes."),
            new Wording("undefined alias", "A value begins with '*', which YAML reads as a mark.",
                    "Put the value into double quotes."),
            new Wording("escape", "A backslash in a text with double quotes begins an escape that does not exist.",
                    "Use single quotes, or write the backslash twice."));

    private static final Wording NO_COLON = new Wording("could not find expected ':'", "A colon is missing after the key on this line.",
            "Write 'key: value', with a colon and a blank after the key.");

    private YamlSlip() {
    }

    /**
     * What the slip is, at the line on which it is put right.
     *
     * @param yaml the text
     * @param offset of a mark in it
     * @param places the place of an offset
     */
    static Message message(MarkedYAMLException slip, String yaml, ToIntFunction<Mark> offset, IntFunction<Place> places) {
        String heard = heard(slip);
        Mark mark = slip.getProblemMark() == null ? slip.getContextMark() : slip.getProblemMark();
        int at = mark == null ? 0 : offset.applyAsInt(mark);
        if (heard.contains(NO_COLON.heard())) {
            return message(NO_COLON, places.apply(slip.getContextMark() == null ? at : offset.applyAsInt(slip.getContextMark())));
        }
        OptionalInt key = heard.contains(SECOND_COLON) ? new MissingColon(yaml).before(at) : OptionalInt.empty();
        return key.isPresent() ? message(NO_COLON, places.apply(key.getAsInt())) : message(wording(heard), places.apply(at));
    }

    private static String heard(MarkedYAMLException slip) {
        return slip.getProblem() + " " + slip.getContext();
    }

    private static Wording wording(String heard) {
        return WORDINGS.stream().filter(known -> heard.contains(known.heard())).findFirst()
                .orElse(new Wording("", "This line is not YAML.",
                        "Compare it with the lines around it: 'key: value', lists in [ ], text with special signs in double quotes."));
    }

    private static Message message(Wording wording, Place place) {
        return ReadingMessages.NOT_YAML.at(place, "problem", wording.problem(), "remedy", wording.remedy());
    }
}

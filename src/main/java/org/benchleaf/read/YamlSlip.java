package org.benchleaf.read;

import java.util.List;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says in our own words what keeps a text from being YAML. */
final class YamlSlip {

    /** What the parser says, what that means to an author, and what to do. */
    private record Wording(String heard, String problem, String remedy) {
    }

    private static final List<Wording> WORDINGS = List.of(
            new Wording("mapping values are not allowed here", "A second ': ' stands on this line.",
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
            new Wording("could not find expected ':'", "A key here has no ':' after it.",
                    "Write 'key: value', with a blank after the colon."),
            new Wording("cannot start any token", "A value begins with a sign that has a meaning of its own in YAML.",
                    "Put the value into double quotes."),
            new Wording("alphabetic or numeric character", "A value begins with '&' or '*', which YAML reads as a mark.",
                    "Put the value into double quotes."),
            new Wording("undefined alias", "A value begins with '*', which YAML reads as a mark.",
                    "Put the value into double quotes."),
            new Wording("escape", "A backslash in a text with double quotes begins an escape that does not exist.",
                    "Use single quotes, or write the backslash twice."));

    private YamlSlip() {
    }

    static Message message(MarkedYAMLException slip, Place place) {
        String heard = slip.getProblem() + " " + slip.getContext();
        Wording wording = WORDINGS.stream().filter(known -> heard.contains(known.heard())).findFirst()
                .orElse(new Wording("", "This line is not YAML.",
                        "Compare it with the lines around it: 'key: value', lists in [ ], text with special signs in double quotes."));
        return ReadingMessages.NOT_YAML.at(place, "problem", wording.problem(), "remedy", wording.remedy());
    }
}

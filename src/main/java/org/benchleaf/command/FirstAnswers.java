package org.benchleaf.command;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.StepKind;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The dozen questions with which a case begins, and what was answered: nothing, where nothing was said. */
final class FirstAnswers {

    /** The word for a step that the list of kinds lacks. */
    static final String OTHER = "other";

    @Option(names = "--title", paramLabel = "TEXT", description = "What the case is called.")
    private String title = "";

    @Mixin
    private SourceAnswers source = new SourceAnswers();

    @Option(names = "--object", paramLabel = "KIND, TECHNIQUE",
            description = "What lies before you and how it was made, such as 'broadside, letterpress'.")
    private String object = "";

    @Option(names = "--size", paramLabel = "HEIGHT x WIDTH", description = "Such as '412 mm x 298 mm'.")
    private String size = "";

    @Option(names = "--paper", paramLabel = "PAPER, GRAMMAGE", description = "Such as 'wood pulp, 82 g/m²'.")
    private String paper = "";

    @Option(names = "--medium", paramLabel = "MEDIUM, COLOUR",
            description = "What stands on the sheet, such as 'stamp-pad ink, violet'; once for each.")
    private List<String> media = new ArrayList<>();

    @Option(names = "--damage", paramLabel = "DAMAGE, PLACE, EXTENT",
            description = "What is wrong with it, where and how large, such as 'tear, right edge, 64 mm'; once for each.")
    private List<String> damages = new ArrayList<>();

    @Option(names = "--aim", paramLabel = "TEXT", description = "What the treatment is for; once for each aim.")
    private List<String> aims = new ArrayList<>();

    @Option(names = "--step", paramLabel = "KIND",
            description = "A kind of step such as 'surface cleaning', or 'other' for one that the list lacks; once for each, in the"
                    + " order of the work. Where several items are treated: 'washing: leaf', so that each item has an order of its own.")
    private List<String> steps = new ArrayList<>();

    @Option(names = "--instead", paramLabel = "OPTION: WHY NOT",
            description = "What else was thought of and why it is not done; once for each.")
    private List<String> instead = new ArrayList<>();

    @Option(names = "--liquid", paramLabel = "NAME",
            description = "A liquid or adhesive that will touch the sheet: one of the studio's materials, or a name of your"
                    + " own for what is still to be described; once for each.")
    private List<String> liquids = new ArrayList<>();

    @Option(names = "--agreed", paramLabel = "DATE",
            description = "When the owner agreed to the treatment in writing, such as 2026-03-02.")
    private String agreed = "";

    @Option(names = "--owner", paramLabel = "NAME", description = "Who owns it. Private: it never leaves the case file.")
    private String owner = "";

    /** Asks for what was not said yet; an empty line is no answer, and the end of the input ends the asking. */
    void ask(BufferedReader in, PrintWriter out) {
        out.println("A dozen questions. An empty line means: not known yet. Several answers: put a semicolon between them.");
        title = Asking.one(title, "What is the case called?", in, out);
        source.ask(in, out);
        object = Asking.one(object, "What lies before you, and how was it made? (broadside, letterpress)", in, out);
        size = Asking.one(size, "How high and wide is the sheet? (412 mm x 298 mm)", in, out);
        paper = Asking.one(paper, "What paper is it, and how heavy? (wood pulp, 82 g/m²)", in, out);
        media = Asking.many(media, "What stands on it, each with its colour? (printing ink, black; stamp-pad ink, violet)", in, out);
        damages = Asking.many(damages,
                "What is wrong with it, where, and how large? (tear, right edge, 64 mm; tideline, lower third)", in, out);
        aims = Asking.many(aims, "What is the treatment for?", in, out);
        steps = Asking.many(steps, (source.isRetold() ? "What was done" : "What will you do")
                + ", in which order? (examination; testing; surface cleaning; housing)", FirstAnswers::noKind, in, out);
        if (!source.isRetold()) {
            instead = Asking.many(instead, "What else did you think of, and why not? (leave it dry: it cracks when it is opened)", in, out);
        }
        liquids = Asking.many(liquids, "Which liquids and adhesives will touch it? (deionised-water; paste)", in, out);
        if (!source.isRetold()) {
            agreed = Asking.one(agreed, "When did the owner agree to the treatment in writing? (2026-03-02)", in, out);
            owner = Asking.one(owner, "Who owns it? (private, never leaves the case file)", in, out);
        }
    }

    SourceAnswers source() {
        return source;
    }

    /** Which of the words is no kind of step, and what the kinds are; empty if all are kinds. */
    static Optional<String> noKind(List<String> words) {
        return words.stream().map(word -> two(word, ':').get(0))
                .filter(word -> StepKind.of(word).isEmpty() && !word.equals(OTHER)).findFirst().map(unknown -> "'" + unknown
                + "' is not a kind of step; the kinds are "
                + String.join(", ", Stream.concat(Stream.of(StepKind.values()).map(StepKind::word), Stream.of(OTHER)).toList()));
    }

    /** Why an option is none of this case: a retold one has no owner to ask, one of this studio no publication. */
    Optional<String> stray() {
        Optional<String> ofOwner = !owner.isEmpty() ? Optional.of("--owner") : !agreed.isEmpty() ? Optional.of("--agreed")
                : !instead.isEmpty() ? Optional.of("--instead") : Optional.empty();
        return source.isRetold()
                ? ofOwner.map(option -> "'" + option + "' belongs to a treatment of this studio; a retold case names its '--source'")
                : source.withoutSource().map(option -> "'" + option + "' needs '--source', the publication of which it says something");
    }

    String title() {
        return title;
    }

    /** Kind and technique. */
    List<String> object() {
        return two(object, ',');
    }

    /** Height and width; one answer for both where they were said not to be known. */
    List<String> size() {
        return MissingValue.read(size).isPresent() ? List.of(size) : two(size.replace('×', 'x'), 'x');
    }

    /** Paper and grammage. */
    List<String> paper() {
        return two(paper, ',');
    }

    /** Each medium and its colour. */
    List<List<String>> media() {
        return media.stream().map(one -> two(one, ',')).toList();
    }

    /** Each damage and where it is. */
    List<List<String>> damages() {
        return damages.stream().map(one -> two(one.substring(0, one.length() - extent(one).length()), ',')).toList();
    }

    /** How large each damage is; empty where it was not said. */
    List<String> extents() {
        return damages.stream().map(one -> extent(one).replaceFirst(",", "").strip()).toList();
    }

    /** What follows the last comma, with it, where that is a size or said not to be known: a place may have commas of its own. */
    private static String extent(String damage) {
        String last = damage.substring(Math.max(0, damage.lastIndexOf(',')));
        boolean third = damage.indexOf(',') < damage.lastIndexOf(',');
        String said = last.startsWith(",") ? last.substring(1).strip() : "";
        return said.matches("\\d.*") || third && said.startsWith("not known") ? last : "";
    }

    List<String> aims() {
        return aims;
    }

    /** As they were said. */
    List<String> steps() {
        return steps;
    }

    /** Each kind of step and the item that it is done to; no item for the whole object. */
    List<List<String>> kinds() {
        return steps.stream().map(one -> two(one, ':')).toList();
    }

    /** The items that steps are done to, each once. */
    List<String> items() {
        return kinds().stream().map(step -> step.get(1)).filter(item -> !item.isEmpty()).distinct().toList();
    }

    /** Each option and why it is not taken. */
    List<List<String>> instead() {
        return instead.stream().map(one -> two(one, ':')).toList();
    }

    List<String> liquids() {
        return liquids;
    }

    String agreed() {
        return agreed;
    }

    String owner() {
        return owner;
    }

    /** The two parts of an answer; empty where one was not said. */
    private static List<String> two(String answer, char between) {
        int at = answer.indexOf(between);
        return at < 0 ? List.of(answer.strip(), "")
                : List.of(answer.substring(0, at).strip(), answer.substring(at + 1).strip());
    }
}

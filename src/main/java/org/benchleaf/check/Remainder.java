package org.benchleaf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.message.ClaimMessages;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.HazardMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.model.Library;
import org.benchleaf.model.LiquidPh;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.Story;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.rule.TradeRules;

/**
 * What can still be told of a case that has errors in its form: everything that rests on its sound parts alone. Where
 * it is not known on what a message rests, it is left out, so that no error has false ones behind it.
 */
public final class Remainder {

    /** Messages about one step, solution or result that rest on it, on what it uses and on the sheet alone. */
    private static final Set<FigureMessages> OF_ONE_ELEMENT = EnumSet.of(FigureMessages.UNKNOWN_FIGURE,
            FigureMessages.REFUSED, FigureMessages.MISSING_INPUT, FigureMessages.NOT_ON_RECORD,
            FigureMessages.NO_TRAY_LARGE_ENOUGH,
            FigureMessages.DEEPER_THAN_TRAY, FigureMessages.STEP_WITHOUT_TIME, FigureMessages.STEP_LONGER_THAN_ALLOWED,
            FigureMessages.NIGHT_WITHOUT_HANDS_ON, FigureMessages.HANDS_ON_LONGER_THAN_STEP, FigureMessages.NO_DENSITY);

    private final TreatmentCase readable;
    private final UnsoundParts unsound;

    Remainder(TreatmentCase readable, UnsoundParts unsound) {
        this.readable = readable;
        this.unsound = unsound;
    }

    /** The case with stand-ins in its unsound parts: to go on looking for errors, never to be published. */
    public Optional<TreatmentCase> toWorkOut() {
        return unsound.isSound("object") && unsound.isKnownByElement("steps") && unsound.isKnownByElement("solutions")
                ? Optional.of(readable) : Optional.empty();
    }

    /** Who may see what of the case, if that can be told. */
    public Optional<Publication> publication() {
        return unsound.isSound("publication") ? Optional.of(readable.publication()) : Optional.empty();
    }

    /** The pictures of which every line was read. */
    public List<Picture> pictures() {
        return readable.pictures().stream().filter(picture -> !unsound.holds(picture.place())).toList();
    }

    /** What of the messages of working the case out rests on sound parts alone. */
    public List<Message> sound(Messages workedOut) {
        boolean whole = unsound.isSound("steps", "solutions");
        boolean hazards = whole && unsound.isSound("publication", "reasons", "tests", "condition");
        return workedOut.all().stream().filter(message -> !unsound.holds(message.place()))
                .filter(message -> !(message.id() instanceof HazardMessages) || hazards)
                .filter(message -> message.id() != FigureMessages.UNKNOWN_FIGURE
                        && message.id() != FigureMessages.PASSAGE_OF_NO_FIGURE || isOfSoundElement(message.place()))
                .filter(message -> whole || message.id() instanceof HazardMessages
                        || message.id() instanceof FigureMessages figure && OF_ONE_ELEMENT.contains(figure)
                                && !unsound.leansOn(message.place())).toList();
    }

    /** Whether the figure cited at a place could only be one of a step or solution that has all its figures. */
    private boolean isOfSoundElement(Place citation) {
        return unsound.isSound("steps", "solutions", "results") || citations().filter(cited ->
                cited.place().equals(citation)).map(Story.Citation::figure).anyMatch(figure -> Stream.concat(
                        readable.steps().stream().filter(step -> figure.startsWith(step.id() + ".")).map(Step::place),
                        readable.solutions().stream().filter(solution -> figure.startsWith(solution.id() + "."))
                                .map(Solution::place))
                        .anyMatch(place -> !unsound.holds(place) && !unsound.leansOn(place)));
    }

    private Stream<Story.Citation> citations() {
        return Stream.concat(Stream.of(readable.story()), readable.translations().stream().map(Translation::story))
                .flatMap(story -> story.sections().stream()).flatMap(section -> section.citations().stream());
    }

    /** What rules, claims and pictures have to say to the sound parts. */
    List<Message> review(Library library, LocalDate today, LiquidPh ph) {
        Messages claims = new Messages();
        ClaimChecks.review(readable, library, claims);
        Messages pictures = new Messages();
        PictureChecks.review(readable, pictures);
        List<Message> told = new ArrayList<>();
        claims.all().stream().filter(this::restsOnSoundParts).forEach(told::add);
        pictures.all().stream().filter(message -> !unsound.holds(message.place())).forEach(told::add);
        TradeRules.review(readable, askable(library), today, ph, List.of()).messages().all().stream()
                .filter(message -> !unsound.holds(message.place()) && !isAboutReasons(message.id())).forEach(told::add);
        return told;
    }

    /** How many rules were not asked, since an error stands in what they rest on. */
    public long unasked(Library library) {
        return library.rules().size() - askable(library).rules().size();
    }

    private boolean restsOnSoundParts(Message message) {
        boolean answers = unsound.isSound("reasons")
                && (message.id() != ClaimMessages.AGE || unsound.isSound("object"))
                && (message.id() != ClaimMessages.STRENGTH || unsound.isSound("publication"));
        return answers && !unsound.holds(message.place());
    }

    /** Whether a reason is needed cannot be told while not every rule is asked. */
    private static boolean isAboutReasons(Message.Id id) {
        return Set.of(RuleMessages.REASON_NOT_NEEDED, RuleMessages.REASON_FOR_UNKNOWN_RULE, RuleMessages.REASON_FOR_STOP)
                .contains(id);
    }

    private Library askable(Library library) {
        Predicate<Rule> sound = rule -> RuleGrounds.areSound(rule, unsound);
        boolean matrix = unsound.isSound("object", "tests", "solutions", "steps", "reasons");
        return new Library(library.studio(), library.materials(), library.glossary(), library.sources(),
                library.methods(), library.classes(), library.reference(), library.rules().stream().filter(sound).toList(),
                matrix ? library.matrix() : new Matrix(List.of(), library.matrix().rows()), library.formulary(), library.translations(),
                library.phrases());
    }
}

package org.benchleaf.model;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;

/**
 * The texts of a case that may be told in another language, each by its address: the keys that lead to it in the case file,
 * such as {@code steps.wash.do}; the items of a list count from 1.
 *
 * <p>A section of the story is {@code story.} and its id; what stands above the first heading is {@code story}. Numbers, ids,
 * terms that decide something and what stands for a missing value are not among them.
 */
public final class CaseTexts {

    /** As many letters as tell two wordings of one text apart (common practice, no source). */
    private static final int MARK_LETTERS = 8;
    private static final String STORY = "story";

    /** Makes of an address and the text there another text. */
    private final BinaryOperator<String> change;

    private CaseTexts(BinaryOperator<String> change) {
        this.change = change;
    }

    /** Every text of a case by its address, in the order of the case file. */
    public static Map<String, String> of(TreatmentCase treatment) {
        Map<String, String> texts = new LinkedHashMap<>();
        new CaseTexts((address, text) -> {
            texts.put(address, text);
            return text;
        }).changed(treatment, treatment.language(), treatment.story());
        treatment.story().sections().forEach(section -> texts.put(address(section.id()), section.written()));
        return Collections.unmodifiableMap(texts);
    }

    /** The case in the words of a translation; what that does not have stays in the words of the case. */
    public static TreatmentCase in(Translation translation, TreatmentCase treatment) {
        return new CaseTexts((address, text) -> translation.text(address).orElse(text))
                .changed(treatment, translation.language(), story(translation, treatment.story()));
    }

    /** The address of the section of the story with that id; what stands above the first heading has none. */
    public static String address(String sectionId) {
        return sectionId.isEmpty() ? STORY : STORY + "." + sectionId;
    }

    /** The id of the section at an address; empty if it has none. */
    public static Optional<String> sectionId(String address) {
        return address.startsWith(STORY + ".") ? Optional.of(address.substring(STORY.length() + 1)) : Optional.empty();
    }

    /** Whether an address is that of a section of the story. */
    public static boolean isOfStory(String address) {
        return address.equals(STORY) || address.startsWith(STORY + ".");
    }

    /**
     * The sections of a translated story by their addresses in the case: one belongs to the section with its id, else, where both
     * stories have as many, to the one at its place.
     */
    public static Map<String, Story.Section> sections(Story translated, Story original) {
        List<Story.Section> theirs = translated.sections();
        boolean alike = theirs.size() == original.sections().size();
        Map<String, Story.Section> sections = new LinkedHashMap<>();
        Set<String> ids = original.sections().stream().map(Story.Section::id).collect(Collectors.toSet());
        Map<String, Story.Section> byId = theirs.stream().collect(Collectors.toMap(Story.Section::id, each -> each, (one, twin) -> one));
        for (int at = 0; at < original.sections().size(); at++) {
            Story.Section own = original.sections().get(at);
            Optional<Story.Section> there = alike ? Optional.of(theirs.get(at)).filter(each -> !ids.contains(each.id()))
                    : Optional.empty();
            Optional.ofNullable(byId.get(own.id())).or(() -> there).ifPresent(each -> sections.put(address(own.id()), each));
        }
        return Collections.unmodifiableMap(sections);
    }

    /** Whether a section of a translation says anything; one with a heading alone does where the case has no more. */
    public static boolean isTold(Story.Section translated, String original) {
        return !translated.text().isEmpty() || !translated.heading().isEmpty() && original.indexOf('\n') < 0
                && !translated.written().equals(original);
    }

    /** The first letters of the SHA-256 of a text, by which a translation tells whether it was changed since. */
    public static String mark(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(text.strip().getBytes(StandardCharsets.UTF_8))).substring(0, MARK_LETTERS);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Section by section; one that the translation lacks, or in which it says nothing, stays as it was. */
    private static Story story(Translation translation, Story original) {
        Map<String, Story.Section> told = sections(translation.story(), original);
        return new Story(original.sections().stream()
                .map(own -> translation.text(address(own.id())).map(text -> told.get(address(own.id())))
                .map(each -> new Story.Section(own.id(), each.heading(), each.text(), each.written(), each.citations(), each.place()))
                .orElse(own)).toList());
    }

    private TreatmentCase changed(TreatmentCase from, String language, Story story) {
        TreatmentCase told = new TreatmentCase(from.id(), text("title", from.title()), text("summary", from.summary()),
                from.level(), language,
                publication(from.publication()), object(from.object()), each(from.condition(), this::damage),
                each(from.tests(), this::test),
                proposal(from.proposal()), each(from.instruments(), this::instrument), each(from.solutions(), this::solution),
                each(from.steps(), this::step), each(from.results(), this::result), from.readDays(),
                each(from.trials(), this::trial),
                each(from.pictures(), this::picture),
                each(from.reasons(), this::reason), story, sources(from.sources()), from.translations(), from.workingsPrinted(),
                from.privateFields(), from.untold(), from.place());
        return told.with(answered(told.proposal(), told.results()));
    }

    private PrintObject object(PrintObject from) {
        PaperSupport support = from.support();
        return new PrintObject(text("object.kind", from.kind()), text("object.technique", from.technique()),
                text("object.made.when", from.made()), text("object.made.evidence", from.madeEvidence()), from.opinion(),
                new PaperSupport(text("object.support.paper", support.paper()), support.features(), support.grammage(),
                        support.grammageMissing(), support.thickness(), support.grain(), text("object.support.sizing", support.sizing()),
                        all("object.support.state", support.state()), support.place()),
                from.size(), from.sizeMissing(), from.oneSide(), from.features(), from.afterwards(), from.consultation(),
                each(from.media(), this::medium),
                each(from.items(), this::item), from.place());
    }

    private Medium medium(int number, Medium from) {
        String at = "object.media." + from.id() + ".";
        return new Medium(from.id(), text(at + "is", from.is()), text(at + "colour", from.colour()),
                text(at + "where", from.where()), from.state(), from.grade(), from.of(), from.place());
    }

    private PrintObject.Item item(int number, PrintObject.Item from) {
        String at = "object.items." + from.id() + ".";
        return new PrintObject.Item(from.id(), text(at + "is", from.is()), from.size(), text(at + "condition", from.condition()),
                text(at + "decision", from.decision()));
    }

    private Damage damage(int number, Damage from) {
        String at = "condition." + from.id().orElse(String.valueOf(number)) + ".";
        return new Damage(from.id(), text(at + "what", from.what()), from.of(), text(at + "where", from.where()), from.side(),
                from.extent(), from.extentMissing(), text(at + "counted", from.counted()), from.degree(), from.active(), from.at(),
                text(at + "note", from.note()), from.place());
    }

    private Proposal proposal(Proposal from) {
        Map<StepKind, String> risks = new LinkedHashMap<>();
        from.risks().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(risk ->
                risks.put(risk.getKey(), text("proposal.risks." + risk.getKey().word(), risk.getValue())));
        return new Proposal(each(from.aims(), (number, aim) -> new Proposal.Aim(
                text("proposal.aims." + number, aim.words()), aim.answers())), each(from.options(), (number, option) -> new Proposal.Option(
                text("proposal.options." + number + ".option", option.option()),
                text("proposal.options." + number + ".why not", option.whyNot()))),
                from.approved(), from.steps(), risks, each(from.amendments(), (number, later) ->
                        new Proposal.Amendment(later.on(), later.adds(), text("proposal.amendments." + number + ".why", later.why()))),
                from.place());
    }

    /** What results tell of the aims is written beside the results, which come later in a case. */
    private Proposal answered(Proposal from, List<Result> results) {
        return new Proposal(each(from.aims(), (number, aim) -> new Proposal.Aim(aim.words(), each(aim.answers(), (item, answer) ->
                answer(answer, results)))), from.options(), from.approved(), from.steps(), from.risks(), from.amendments(), from.place());
    }

    private Proposal.Answer answer(Proposal.Answer from, List<Result> results) {
        int number = results.stream().map(Result::place).toList().indexOf(from.result()) + 1;
        return new Proposal.Answer(from.result(), text("results." + number + ".how far", from.howFar()));
    }

    private Instrument instrument(int number, Instrument from) {
        return new Instrument(from.id(), text("instruments." + from.id() + ".is", from.is()), from.resolution(),
                from.calibrated(), from.buffers(), from.place());
    }

    private Solution solution(int number, Solution from) {
        String at = "solutions." + from.id() + ".";
        return new Solution(from.id(), from.name().equals(from.id()) ? from.name() : text(at + "name", from.name()), from.recipe(),
                from.make(), from.least(), from.keeps(), text(at + "kept", from.kept()), from.readyIn(), from.handsOn(),
                from.madeOn(), all(at + "how", from.how()), from.source(), from.lowReserve(), from.place());
    }

    private Step step(int number, Step from) {
        String at = "steps." + from.id() + ".";
        return new Step(from.id(), from.kind(), text(at + "named", from.named()), from.of(), text(at + "do", from.instruction()),
                text(at + "see", from.see()), text(at + "watch", from.watch()), text(at + "if not", from.ifNot()),
                text(at + "until", from.until()), looks(at + "looked for", from.checks()), from.takes(), from.timeMissing(),
                from.handsOn(), from.after(),
                from.waiting().map(wait -> new Step.Wait(wait.time(), wait.day(), text(at + "wait", wait.sign()))),
                from.atMost(), from.hold().map(hold -> hold(at + "hold.", hold)), from.by(), from.people(),
                from.overnight(), from.on(), from.within(), from.area(), text(at + "edge", from.edge()), from.applied(), from.avoids(),
                from.uses(),
                from.practised(), from.emergency(), from.resize().map(resize -> new Step.Decision(resize.yes(),
                        text(at + "resize.why", resize.why()))), text(at + "aim", from.aim()), text(at + "instead", from.instead()),
                each(from.parts(), (item, part) -> part(at, part)), from.place());
    }

    /** What is looked for at a time is found by the time at its end; one whose words lack that stays in the words of the case. */
    private List<String> looks(String address, List<String> from) {
        return each(from, (number, look) -> {
            String told = text(address + "." + number, look);
            return Step.lookTime(told).equals(Step.lookTime(look)) ? told : look;
        });
    }

    private Part part(String at, Part from) {
        return from instanceof Part.Tape tape ? tape(at + "tape.", tape) : from instanceof Part.Mist mist ? mist(at + "mist.", mist)
                : from instanceof Part.Bath bath ? bath.read(each(bath.readings(), (number, reading) ->
                        reading(at + "bath.readings." + number + ".", reading))) : from;
    }

    private Part.Tape tape(String at, Part.Tape from) {
        return new Part.Tape(from.damages(), text(at + "carrier", from.carrier()), text(at + "adhesive", from.adhesive()),
                all(at + "by", from.means()));
    }

    private Part.Mist mist(String at, Part.Mist from) {
        return new Part.Mist(from.of(), from.amount(), from.tool(), from.ultrasonic(), text(at + "water", from.water()),
                text(at + "cleaned", from.cleaned()), from.distance());
    }

    private Part.BathReading reading(String at, Part.BathReading from) {
        return new Part.BathReading(from.bath(), from.phFresh(), from.phUsed(), from.conductivity(), text(at + "colour", from.colour()),
                from.added());
    }

    private Step.Hold hold(String at, Step.Hold from) {
        return new Step.Hold(text(at + "before", from.before()), from.releasedBy(), text(at + "look", from.look()),
                text(at + "meanwhile", from.meanwhile()), from.takes(), from.atMost());
    }

    private Publication publication(Publication from) {
        return from.citing(new Citing(from.citing().authors(), from.citing().identifier(), each(from.citing().versions(),
                (number, version) -> new Citing.Version(version.on(), text("publication.versions." + number + ".changed",
                        version.changed())))));
    }

    /** Whoever retells a publication is a person, and its own words stay as they were published. */
    private CaseSources sources(CaseSources from) {
        return new CaseSources(from.retelling().map(one -> new Retelling(one.passage(), one.by(), text("source.read", one.read()),
                text("source.not read", one.notRead()))), from.parts(), from.figures());
    }

    private SpotTest test(int number, SpotTest from) {
        return new SpotTest(from.medium(), from.with(), from.after(), from.dwell(), from.result(),
                text("tests." + number + ".note", from.note()), from.place());
    }

    private Result result(int number, Result from) {
        return from.ask(new ResultTexts("results." + number + "."));
    }

    private Trial trial(int number, Trial from) {
        String at = "trials." + from.id() + ".";
        return new Trial(from.id(), text(at + "question", from.question()), from.of(), text(at + "what", from.what()),
                text(at + "varies", from.varies()), all(at + "alike", from.alike()), each(from.arms(), (item, arm) -> new Trial.Arm(
                        arm.id(), text(at + "arms." + arm.id() + ".is", arm.is()), arm.control(), arm.count(), arm.steps())),
                each(from.results(), (item, one) -> new Trial.Measure(text(at + "results." + item + ".measure", one.measure()),
                        text(at + "results." + item + ".method", one.method()), one.unit(),
                        each(one.readings(), (row, reading) -> reading(at + "results." + item + ".readings.", reading)))),
                text(at + "found", from.found()), from.place());
    }

    private Trial.Reading reading(String readings, Trial.Reading from) {
        String at = readings + from.arm() + ".";
        return new Trial.Reading(from.arm(), from.before(), from.after(), text(at + "before", from.wordsBefore()),
                text(at + "after", from.wordsAfter()), from.difference(), text(at + "rank", from.rank()));
    }

    private Picture picture(int number, Picture from) {
        String at = "pictures." + from.id() + ".";
        return new Picture(from.id(), from.file(), from.moment(), from.side(), light(at + "light", from.light()),
                text(at + "alt", from.alt()), text(at + "caption", from.caption()), from.credit(), from.licence(), from.step(),
                from.pair(), from.scale(), from.target(), text(at + "caution", from.caution()), from.sheet(), from.place());
    }

    /** One word of light is a term of the trade; more are the author's. */
    private String light(String address, String light) {
        return light.indexOf(' ') < 0 ? light : text(address, light);
    }

    private Reason reason(int number, Reason from) {
        return new Reason(from.rule(), from.step(), from.past(), text("reasons." + number, from.why()), from.place());
    }

    private String text(String address, String text) {
        boolean words = text.codePoints().anyMatch(Character::isLetter) && MissingValue.read(text).isEmpty();
        return words ? change.apply(address, text) : text;
    }

    private Optional<String> text(String address, Optional<String> text) {
        return text.map(some -> text(address, some));
    }

    private List<String> all(String address, List<String> texts) {
        return each(texts, (number, text) -> text(address + "." + number, text));
    }

    private static <T> List<T> each(List<T> all, Rewriting<T> rewriting) {
        List<T> changed = new ArrayList<>();
        for (T one : all) {
            changed.add(rewriting.of(changed.size() + 1, one));
        }
        return changed;
    }

    /** What a result is told with; the word of what it measures stays, for its figures and pages are named by it. */
    private final class ResultTexts implements Result.Kinds<Result> {

        private final String at;

        ResultTexts(String at) {
            this.at = at;
        }

        private MeasureName name(Result from) {
            MeasureName name = from.measure();
            return name.isWorded() ? name : new MeasureName(name.word(), text(at + "measure", name.told()));
        }

        private String method(String method) {
            return text(at + "method", method);
        }

        private Optional<String> note(Optional<String> note) {
            return text(at + "note", note);
        }

        private MeasuringConditions conditions(MeasuringConditions from) {
            return new MeasuringConditions(from.step(), from.ph(), from.methodKnown(), text(at + "method after", from.methodAfter()),
                    text(at + "aged", from.aged()));
        }

        @Override
        public Result readings(Result.Readings from) {
            return new Result.Readings(name(from), method(from.method()), from.unit(), all(at + "places", from.places()),
                    from.before(), from.after(), from.instrument(), from.equilibrated(), note(from.note()),
                    conditions(from.conditions()), from.place());
        }

        @Override
        public Result colour(Result.Colour from) {
            return new Result.Colour(name(from), from.formula(), from.illuminant(), from.observer(), from.geometry(), from.aperture(),
                    from.readingsEach(), from.instrument(), from.equilibrated(), each(from.spots(), (number, spot) ->
                            new Result.ColourSpot(spot.id(), text(at + "spots." + number, spot.at()), spot.before(), spot.after())),
                    note(from.note()), from.place());
        }

        @Override
        public Result size(Result.Size from) {
            return new Result.Size(name(from), method(from.method()), from.heightBefore(), from.widthBefore(), from.heightAfter(),
                    from.widthAfter(), from.humidityBefore(), from.humidityAfter(), note(from.note()), from.place());
        }

        @Override
        public Result reserve(Result.Reserve from) {
            return new Result.Reserve(name(from), text(at + "method", from.method()), from.step(), from.measured(), from.carbonate(),
                    from.amount(), from.uptake(), note(from.note()), from.place());
        }

        @Override
        public Result stated(Result.Stated from) {
            return new Result.Stated(name(from), method(from.method()), from.unit(), from.before(), from.after(), from.instrument(),
                    from.equilibrated(), note(from.note()), conditions(from.conditions()), from.place());
        }

        @Override
        public Result words(Result.Words from) {
            List<String> ranks = all(at + "ranks", from.ranks());
            return new Result.Words(name(from), method(from.method()), ranked("before", from.before(), from.ranks(), ranks),
                    ranked("after", from.after(), from.ranks(), ranks), ranks, from.unit(), from.instrument(), from.equilibrated(),
                    note(from.note()), conditions(from.conditions()), from.place());
        }

        /** A word of the scale is told as it stands there, so that its rank is found. */
        private Optional<String> ranked(String key, Optional<String> told, List<String> ranks, List<String> there) {
            return told.map(word -> ranks.contains(word) ? there.get(ranks.indexOf(word)) : text(at + key, word));
        }

        @Override
        public Result notMeasured(Result.NotMeasured from) {
            return new Result.NotMeasured(name(from), text(at + "not measured", from.because()), from.place());
        }
    }

    /** Writes one of several anew, which count from 1. */
    private interface Rewriting<T> {
        T of(int number, T from);
    }
}

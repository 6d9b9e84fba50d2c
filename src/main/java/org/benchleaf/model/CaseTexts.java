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
        return new TreatmentCase(from.id(), text("title", from.title()), text("summary", from.summary()), from.level(), language,
                from.publication(), object(from.object()), each(from.condition(), this::damage), from.tests(),
                proposal(from.proposal()), each(from.instruments(), this::instrument), each(from.solutions(), this::solution),
                each(from.steps(), this::step), from.results(), from.trials(), each(from.pictures(), this::picture),
                each(from.reasons(), this::reason), story, from.sources(), from.translations(), from.workingsPrinted(),
                from.privateFields(), from.place());
    }

    private PrintObject object(PrintObject from) {
        PaperSupport support = from.support();
        return new PrintObject(text("object.kind", from.kind()), text("object.technique", from.technique()),
                text("object.made.when", from.made()), text("object.made.evidence", from.madeEvidence()), from.opinion(),
                new PaperSupport(text("object.support.paper", support.paper()), support.features(), support.grammage(),
                        support.thickness(), support.grain(), text("object.support.sizing", support.sizing()),
                        all("object.support.state", support.state()), support.place()),
                from.size(), from.sizeMissing(), from.oneSide(), from.features(), from.afterwards(), from.consultation(),
                each(from.media(), this::medium),
                each(from.items(), this::item), from.place());
    }

    private Medium medium(int number, Medium from) {
        String at = "object.media." + from.id() + ".";
        return new Medium(from.id(), text(at + "is", from.is()), text(at + "colour", from.colour()),
                text(at + "where", from.where()), from.state(), from.grade(), from.place());
    }

    private PrintObject.Item item(int number, PrintObject.Item from) {
        String at = "object.items." + from.id() + ".";
        return new PrintObject.Item(from.id(), text(at + "is", from.is()), from.size(), text(at + "condition", from.condition()),
                text(at + "decision", from.decision()));
    }

    private Damage damage(int number, Damage from) {
        String at = "condition." + from.id().orElse(String.valueOf(number)) + ".";
        return new Damage(from.id(), text(at + "what", from.what()), from.of(), text(at + "where", from.where()), from.side(),
                from.extent(), from.degree(), from.active(), from.at(), text(at + "note", from.note()), from.place());
    }

    private Proposal proposal(Proposal from) {
        Map<StepKind, String> risks = new LinkedHashMap<>();
        from.risks().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(risk ->
                risks.put(risk.getKey(), text("proposal.risks." + risk.getKey().word(), risk.getValue())));
        return new Proposal(each(from.aims(), (number, aim) -> new Proposal.Aim(
                text("proposal.aims." + number, aim.words()), aim.toldBy())), each(from.options(), (number, option) -> new Proposal.Option(
                text("proposal.options." + number + ".option", option.option()),
                text("proposal.options." + number + ".why not", option.whyNot()))),
                from.approved(), from.steps(), risks, from.amendments(), from.place());
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
                text(at + "until", from.until()), from.checks(), from.takes(), from.timeMissing(), from.handsOn(), from.after(),
                from.waiting(), from.atMost(), from.hold().map(hold -> hold(at + "hold.", hold)), from.by(), from.people(),
                from.overnight(), from.on(), from.area(), text(at + "edge", from.edge()), from.avoids(), from.uses(),
                from.practised(), from.emergency(), from.resize().map(resize -> new Step.Decision(resize.yes(),
                        text(at + "resize.why", resize.why()))), text(at + "aim", from.aim()), text(at + "instead", from.instead()),
                from.parts(), from.place());
    }

    private Step.Hold hold(String at, Step.Hold from) {
        return new Step.Hold(text(at + "before", from.before()), from.releasedBy(), text(at + "look", from.look()),
                text(at + "meanwhile", from.meanwhile()), from.takes(), from.atMost());
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

    /** Writes one of several anew, which count from 1. */
    private interface Rewriting<T> {
        T of(int number, T from);
    }
}

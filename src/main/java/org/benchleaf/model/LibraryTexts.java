package org.benchleaf.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The texts of the program's own tables that stand on the pages of a case: names and notes of calculations, cautions, what is
 * known of hazards, rules. Keys, words that are looked for, sources and numbers are not among them, nor are statements of hazard,
 * which have an official wording.
 */
public final class LibraryTexts {

    private static final Pattern TEXT_OF_FORMULA = Pattern.compile("(?<=<mtext>)[^<]++(?=</mtext>)");

    /** Makes of the address of a text (empty for one of the program's own) and the text another text. */
    private final BinaryOperator<String> change;

    private LibraryTexts(UnaryOperator<String> change) {
        this((address, text) -> change.apply(text));
    }

    private LibraryTexts(BinaryOperator<String> change) {
        this.change = change;
    }

    /** Every text of the tables, in their order. */
    public static Set<String> of(Library library) {
        Set<String> texts = new LinkedHashSet<>();
        new LibraryTexts(text -> {
            texts.add(text);
            return text;
        }).changed(library, Phrases.ENGLISH);
        Stream.of(Matrix.Verdict.values()).map(Matrix.Verdict::words).forEach(texts::add);
        texts.add(Protection.SENTENCE);
        texts.add(Rule.Backing.NO_SOURCE);
        library.reference().substances().values().forEach(one -> texts.addAll(one.synonyms()));
        Stream.of(StepKind.values()).map(StepKind::word).forEach(texts::add);
        library.reference().statements().values().forEach(one -> one.signal().ifPresent(texts::add));
        library.formulary().methods().forEach(method -> method.inputs().forEach(input -> texts.addAll(input.words())));
        return Collections.unmodifiableSet(texts);
    }

    /**
     * Every text of the studio's own that stands on the pages of a case. A library keeps them as they are, since hazards are found
     * by the names of materials; a page asks {@link Phrases#of} for the words.
     */
    public static Set<String> ofStudio(Library library) {
        return new LinkedHashSet<>(byAddress(library).values());
    }

    /**
     * The texts of {@link #ofStudio}, each by its address: the file and the keys that lead to it, such as
     * {@code materials.water.name}; the items of a list count from 1. One text may stand at several addresses.
     */
    public static Map<String, String> byAddress(Library library) {
        Map<String, String> texts = new LinkedHashMap<>();
        LibraryTexts gathering = new LibraryTexts((address, text) -> {
            texts.put(address, text);
            return text;
        });
        library.materials().values().forEach(gathering::material);
        library.classes().forEach(course -> {
            gathering.course(course);
            gathering.each(at(course) + "shared", course.day().shared().keySet());
            gathering.each(at(course) + "vessels", course.stores().vessels().stream().map(ClassStores.Vessel::kind).toList());
            gathering.each(at(course) + "waste", course.stores().cans().values().stream().flatMap(can -> can.stands().stream()).toList());
        });
        library.glossary().forEach(gathering::term);
        gathering.studio(library.studio());
        return Collections.unmodifiableMap(texts);
    }

    private void material(Material material) {
        String at = "materials." + material.id() + ".";
        text(at + "name", material.name());
        text(at + "plain", material.plain());
        text(at + "kept", material.kept());
        each(at + "traits", material.traits().stream().sorted().toList());
    }

    private void term(Term term) {
        String at = "glossary." + term.id() + ".";
        text(at + "term", term.term());
        each(at + "also", term.also());
        text(at + "plain", term.plain());
        each(at + "more", term.more().stream().toList());
    }

    private void studio(Studio studio) {
        each("studio.trays", studio.trays().stream().map(Studio.Tray::id).toList());
        each("studio.balances", studio.balances().stream().map(Studio.Balance::id).toList());
        text("studio.about", studio.about());
        each("studio.does", studio.does());
        each("studio.people", studio.people());
        each("studio.contact", studio.contact());
        text("studio.emergency", studio.emergency());
        text("studio.waste", studio.waste());
    }

    /** The library in the words of a language; what these do not have stays as it is. */
    public static Library in(Phrases phrases, Library library) {
        return new LibraryTexts(phrases::ofProgram).changed(library, phrases);
    }

    /** A class in the words of a language; its numbers, and the names by which things are found, stay. */
    public static CourseClass in(Phrases phrases, CourseClass course) {
        return new LibraryTexts(phrases::of).course(course);
    }

    private CourseClass course(CourseClass from) {
        return new CourseClass(from.id(), text(at(from) + "title", from.title()), from.caseId(), from.starts(), from.stations(),
                from.sheetsEach(), from.firstStep(), from.lastStep(), day(at(from), from.day()),
                papers(at(from), from.papers()), from.stores(),
                from.place());
    }

    private ClassDay day(String at, ClassDay from) {
        Map<String, ClassDay.Use> uses = new LinkedHashMap<>();
        from.uses().forEach((step, use) -> uses.put(step, new ClassDay.Use(use.at(), use.takes(), use.by(),
                text(at + "uses." + step + ".look", use.look()), use.place())));
        return new ClassDay(from.endsBy(), from.breaks(), from.rhythm(), from.groups(), from.traineesEach(), from.supervisors(),
                from.mostTraineesEach(), from.shared(), uses, from.limits(), from.work());
    }

    private static String at(CourseClass course) {
        return "classes." + course.id() + ".";
    }

    private ClassPapers papers(String at, ClassPapers from) {
        return new ClassPapers(from.published(), each(at + "aims", from.aims()), from.sheets(),
                text(at + "like", from.like()), from.making().map(making -> new SheetMaking(making.bought(),
                        text(at + "bought as", making.from()), making.delivery(), making.steps(),
                        text(at + "how", making.how()), making.takesEach(), making.by(), making.place())),
                from.issue().map(issue -> new ClassPapers.Issue(issue.number(), issue.on(), issue.replaces(), issue.validUntil(),
                        text(at + "issue.prepared by", issue.preparedBy()), text(at + "issue.approved by", issue.approvedBy()),
                        issue.place())),
                each(at + "issue.changes", from.changes()), outcomes(at + "outcomes.", from.outcomes()), from.trainees(), from.practice(),
                from.issued(), text(at + "marked by", from.assessor()));
    }

    private List<ClassPapers.Outcome> outcomes(String at, List<ClassPapers.Outcome> from) {
        List<ClassPapers.Outcome> outcomes = new ArrayList<>();
        for (ClassPapers.Outcome one : from) {
            String item = at + (outcomes.size() + 1) + ".";
            outcomes.add(new ClassPapers.Outcome(one.at(), text(item + "will", one.will()), text(item + "met when", one.metWhen()),
                    text(item + "not yet", one.notYet()), one.must(), one.place()));
        }
        return outcomes;
    }

    private Library changed(Library from, Phrases phrases) {
        return new Library(from.studio(), from.materials(), from.glossary(), from.sources(), map(from.methods(), this::method),
                from.classes(), reference(from.reference(), phrases), each(from.rules(), this::rule), matrix(from.matrix()),
                formulary(from.formulary()), from.translations(), phrases);
    }

    private Formulary formulary(Formulary from) {
        return new Formulary(each(from.methods(), this::method), each(from.plainMethods(), this::method), from.sources(),
                from.tables(), from.constants());
    }

    private Method method(Method from) {
        return new Method(from.name(), text(from.title()), from.subject(), text(from.answers()), text(from.formula()),
                mathml(from.mathml()), text(from.range()), from.sources(), from.ownEnds(), each(from.caveats(), this::text),
                each(from.inputs(), this::input),
                each(from.outputs(), output -> new Method.Output(output.key(), text(output.label()), output.unit(), output.yesOrNo())));
    }

    private Method.Input input(Method.Input from) {
        return new Method.Input(from.key(), text(from.label()), from.dimensions(), from.words(), from.many(), from.usual(),
                from.required(), from.low(), from.high(), from.unit(), text(from.rangeSource()), from.example());
    }

    private String mathml(String from) {
        return TEXT_OF_FORMULA.matcher(from).replaceAll(found -> java.util.regex.Matcher.quoteReplacement(text(found.group())));
    }

    private Rule rule(Rule from) {
        return new Rule(from.id(), from.theme(), text(from.statement()), from.weight(), from.forTrainees(), from.past(), from.speaksOf(),
                from.answersFor(), from.where(), from.needs(), from.forbids(), from.heldBy(), from.what(), from.why(), from.fix(),
                from.backing(), from.ofStudio(), from.change(), from.place());
    }

    private Matrix matrix(Matrix from) {
        return new Matrix(each(from.actions(), action -> new Matrix.Action(action.id(), text(action.name()), action.wet(), action.is())),
                each(from.rows(), row -> new Matrix.Row(row.id(), text(row.name()), row.also(), row.verdicts(), row.note(),
                        row.backing(), row.ofStudio(), row.changes(), row.place())));
    }

    private Reference reference(Reference from, Phrases phrases) {
        return new Reference(map(from.substances(), this::substance),
                map(from.statements(), one -> phrases.statement(one.code()).map(one::inWordsOf).orElse(one)),
                map(from.pictograms(), one -> new Reference.Pictogram(one.code(), text(one.name()), one.meaning(), one.svg(),
                        one.source())),
                map(from.equipment(), one -> new Reference.Equipment(one.code(), text(one.name()), one.kind(), one.strictness(),
                        one.also(), text(one.words()), one.source())),
                from.rules(), map(from.cautions(), this::caution), map(from.waste(), this::waste),
                each(from.firstAid(), one -> new Reference.FirstAid(one.where(), one.statements(), one.cautions(), text(one.words()),
                        one.source())),
                from.labels(), from.claims(),
                each(from.incompatible(), one -> new Reference.Incompatible(one.key(), one.between(), text(one.gives()),
                        text(one.words()), one.source())),
                each(from.access(), this::access), from.acute(), from.precedence(),
                map(from.wordings(), one -> new Reference.Wording(one.key(), text(one.words()), text(one.remedy()))),
                from.limits(), publicCare(from.publicCare()), from.things(), each(from.compared(), this::compared), from.thesaurus(),
                map(from.layOut(), one -> new LayOutRow(one.role(), one.each(), one.per(), one.usedUp(), text(one.words()))),
                from.shapes(), from.hazardClasses(),
                each(from.needs(), one -> new BenchNeed(one.name(), one.forWork(), one.each(), one.per(), text(one.words()),
                        one.bought())),
                each(from.notes(), one -> new BenchNote(one.forWork(), text(one.about()), one.at(), one.things(),
                        text(one.words()))));
    }

    private Substance substance(Substance from) {
        return from.told(text(from.name()), text(from.because()), each(from.exposure(), limit -> new Substance.ExposureLimit(
                text(limit.kind()), limit.limit(), text(limit.where()), limit.source())), from.gloves().map(gloves ->
                        new Substance.Gloves(text(gloves.words()), gloves.source())), text(from.note()), text(from.edition()));
    }

    private Reference.Caution caution(Reference.Caution from) {
        return new Reference.Caution(from.key(), from.level(), text(from.name()), text(from.words()), text(from.doFirst()),
                from.wear(), text(from.turn()), from.at(), from.when(), from.source());
    }

    private Reference.WasteKind waste(Reference.WasteKind from) {
        return new Reference.WasteKind(from.key(), text(from.name()), from.statements(), from.cautions(), from.phBelow(),
                from.phAbove(), from.neverWith(), text(from.bottle()), text(from.words()), text(from.drain()), from.source());
    }

    private Reference.Access access(Reference.Access from) {
        return new Reference.Access(from.key(), from.substances(), from.statements(), from.groups(), from.from(), from.ph(),
                from.moreThan(), from.usedBy(), from.trainee(), from.withheld(), text(from.instead()), text(from.why()), from.source());
    }

    private PublicCare publicCare(PublicCare from) {
        return new PublicCare(from.plainWords(), each(from.advice(), one -> new PublicCare.Advice(one.key(), one.about(), one.where(),
                text(one.sheets()), text(one.words()), one.address(), one.source())));
    }

    private ComparedMaterial compared(ComparedMaterial from) {
        return new ComparedMaterial(text(from.name()), from.kind(), from.substances(), from.named(), from.alone(),
                map(from.cells(), one -> new ComparedMaterial.Cell(text(one.says()), one.source(), one.with())),
                each(from.arguments(), one -> new ComparedMaterial.Argument(one.where(), one.favours(), text(one.says()), one.source(),
                        one.rule())));
    }

    private String text(String text) {
        return text("", text);
    }

    private String text(String address, String text) {
        return text.codePoints().anyMatch(Character::isLetter) ? change.apply(address, text) : text;
    }

    private Optional<String> text(String address, Optional<String> text) {
        return text.map(there -> text(address, there));
    }

    private List<String> each(String address, Collection<String> all) {
        List<String> changed = new ArrayList<>();
        all.forEach(one -> changed.add(text(address + "." + (changed.size() + 1), one)));
        return changed;
    }

    private Optional<String> text(Optional<String> text) {
        return text.map(this::text);
    }

    private static <T> List<T> each(List<T> all, UnaryOperator<T> changing) {
        return all.stream().map(changing).toList();
    }

    private static <T> Map<String, T> map(Map<String, T> all, Function<T, T> changing) {
        Map<String, T> changed = new LinkedHashMap<>();
        all.forEach((key, one) -> changed.put(key, changing.apply(one)));
        return Collections.unmodifiableMap(changed);
    }
}

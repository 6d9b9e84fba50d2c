package org.benchleaf.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    private final UnaryOperator<String> change;

    private LibraryTexts(UnaryOperator<String> change) {
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
        return Collections.unmodifiableSet(texts);
    }

    /**
     * Every text of the studio's own that stands on the pages of a case. A library keeps them as they are, since hazards are found
     * by the names of materials; a page asks {@link Phrases#of} for the words.
     */
    public static Set<String> ofStudio(Library library) {
        Set<String> texts = new LinkedHashSet<>();
        library.materials().values().forEach(material -> texts.add(material.name()));
        LibraryTexts ofClasses = new LibraryTexts(text -> {
            texts.add(text);
            return text;
        });
        library.classes().forEach(course -> {
            ofClasses.course(course);
            texts.addAll(course.day().shared().keySet());
            course.stores().vessels().forEach(vessel -> texts.add(vessel.kind()));
        });
        library.glossary().forEach(term -> {
            texts.add(term.term());
            texts.addAll(term.also());
            texts.add(term.plain());
            texts.addAll(term.more().stream().toList());
        });
        Studio studio = library.studio();
        studio.trays().forEach(tray -> texts.add(tray.id()));
        studio.balances().forEach(balance -> texts.add(balance.id()));
        texts.add(studio.about());
        texts.addAll(studio.does());
        texts.addAll(studio.people());
        texts.addAll(studio.contact());
        texts.add(studio.emergency());
        texts.add(studio.waste());
        return Collections.unmodifiableSet(texts);
    }

    /** The library in the words of a language; what these do not have stays as it is. */
    public static Library in(Phrases phrases, Library library) {
        return new LibraryTexts(phrases::of).changed(library, phrases);
    }

    /** A class in the words of a language; its numbers, and the names by which things are found, stay. */
    public static CourseClass in(Phrases phrases, CourseClass course) {
        return new LibraryTexts(phrases::of).course(course);
    }

    private CourseClass course(CourseClass from) {
        return new CourseClass(from.id(), text(from.title()), from.caseId(), from.starts(), from.stations(), from.sheetsEach(),
                from.firstStep(), from.lastStep(), from.day(), papers(from.papers()), from.stores(), from.place());
    }

    private ClassPapers papers(ClassPapers from) {
        return new ClassPapers(from.published(), each(from.aims(), this::text), from.sheets(), text(from.like()),
                from.issue().map(issue -> new ClassPapers.Issue(issue.number(), issue.on(), issue.replaces(), issue.validUntil(),
                        text(issue.preparedBy()), text(issue.approvedBy()), issue.place())),
                each(from.changes(), this::text), each(from.outcomes(), one -> new ClassPapers.Outcome(one.at(), text(one.will()),
                        text(one.metWhen()), text(one.notYet()), one.must(), one.place())),
                from.trainees(), from.practice(), from.issued());
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
        return new Method(from.name(), text(from.title()), from.answers(), text(from.formula()), mathml(from.mathml()), from.range(),
                from.sources(), from.ownEnds(), each(from.caveats(), this::text), each(from.inputs(), this::input),
                each(from.outputs(), output -> new Method.Output(output.key(), text(output.label()), output.unit(), output.yesOrNo())));
    }

    private Method.Input input(Method.Input from) {
        return new Method.Input(from.key(), text(from.label()), from.dimensions(), from.words(), from.many(), from.usual(),
                from.required(), from.low(), from.high(), from.unit(), from.rangeSource(), from.example());
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
        return new Reference(map(from.substances(), one -> one.named(text(one.name()))),
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
                from.shapes(), from.hazardClasses());
    }

    private Reference.Caution caution(Reference.Caution from) {
        return new Reference.Caution(from.key(), from.level(), text(from.name()), text(from.words()), text(from.doFirst()),
                from.wear(), from.when(), from.source());
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
                text(one.words()), one.source())));
    }

    private ComparedMaterial compared(ComparedMaterial from) {
        return new ComparedMaterial(text(from.name()), from.kind(), from.substances(), from.named(), from.alone(), from.cells(),
                each(from.arguments(), one -> new ComparedMaterial.Argument(one.where(), one.favours(), text(one.says()), one.source(),
                        one.rule())));
    }

    private String text(String text) {
        return text.codePoints().anyMatch(Character::isLetter) ? change.apply(text) : text;
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

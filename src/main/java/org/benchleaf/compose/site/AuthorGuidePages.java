package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.Reference;
import org.benchleaf.model.SourceLicence;
import org.benchleaf.model.Substance;
import org.benchleaf.model.TestWords;
import org.benchleaf.page.KeyList;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;
import org.benchleaf.words.Words;

/** What an author needs beside the keys: a first case in ten steps, the words that fields take, the figures to cite. */
final class AuthorGuidePages {

    private static final String KIND = "writing-file";
    private static final String FIRST = "writing-first-case.html";
    private static final String WORDS = "writing-words.html";
    private static final String FIGURES = "writing-figures.html";

    private final SiteDesk desk;
    private final AuthorGuide guide;

    AuthorGuidePages(SiteDesk desk) {
        this.desk = desk;
        this.guide = desk.guide();
    }

    List<Page> make() {
        return List.of(firstCase(), words(), figures());
    }

    /** The ways to them. */
    static List<LinkList.Entry> entries(Sheet sheet) {
        Words words = sheet.words();
        return Stream.of(List.of("first", FIRST), List.of("words", WORDS), List.of("figures", FIGURES))
                .map(way -> new LinkList.Entry(sheet.link(words.say("writing." + way.get(0)), way.get(1)),
                        words.say("writing." + way.get(0) + "-lead"))).toList();
    }

    private Sheet opened(String path, String name) {
        Sheet sheet = desk.sheet(path, KIND);
        Words words = sheet.words();
        sheet.add(new Opening(Optional.of(words.say("way.writing")), words.say("writing." + name),
                Optional.of(words.say("writing." + name + "-lead")), List.of(), Optional.empty()));
        return sheet;
    }

    private static Page closed(Sheet sheet, String name) {
        return sheet.page(sheet.words().say("writing." + name), sheet.words().say("writing." + name + "-lead"));
    }

    private Page firstCase() {
        Sheet sheet = opened(FIRST, "first");
        int number = 1;
        for (AuthorGuide.Lesson lesson : guide.firstCase()) {
            String heading = sheet.words().say("writing.step", "n", number, "name", lesson.name());
            sheet.add(new Section("step-" + number, heading, Optional.empty(),
                    List.of(new Prose(passages(sheet, lesson, number == 1 ? "first-facts" : "facts")))));
            number++;
        }
        return closed(sheet, "first");
    }

    private static List<Prose.Passage> passages(Sheet sheet, AuthorGuide.Lesson lesson, String above) {
        Words words = sheet.words();
        List<Prose.Passage> passages = new ArrayList<>();
        lesson.text().forEach(text -> passages.add(paragraph(sheet.numbers().spaced(text))));
        for (AuthorGuide.Change change : lesson.changes()) {
            quoted(passages, words.say("writing.instead-of"), change.from());
            quoted(passages, words.say("writing.write"), change.to());
        }
        lesson.facts().ifPresent(lines -> quoted(passages, words.say("writing." + above), lines));
        lesson.story().ifPresent(lines -> quoted(passages, words.say("writing.story"), lines));
        quoted(passages, words.say("writing.tells"), lesson.tells());
        return passages;
    }

    private static void quoted(List<Prose.Passage> passages, String before, String lines) {
        passages.add(paragraph(before));
        passages.add(Prose.Passage.of(new TextBlock.CodeBlock(lines.stripTrailing())));
    }

    private static Prose.Passage paragraph(String text) {
        return Prose.Passage.paragraph(text);
    }

    private Page words() {
        Sheet sheet = opened(WORDS, "words");
        Words words = sheet.words();
        sheet.add(new Section("elsewhere", words.say("writing.words-elsewhere"), Optional.empty(), List.of(new Prose(List.of(
                paragraph(words.say("writing.words-elsewhere-text")))))));
        sheet.add(new Section("indicators", words.say("writing.indicators"), Optional.of(words.say("writing.indicators-lead")), List.of(
                new KeyList(guide.testWords().sets().stream().flatMap(set -> set.with().stream()).map(one -> new KeyList.Entry(one.name(),
                        false, one.means(), List.of(), Optional.empty())).toList(), words.group("word-list")))));
        for (TestWords.WordSet set : guide.testWords().sets()) {
            sheet.add(new Section("test-" + Paths.slug(set.name()), words.say("writing.test-words", "with", set.name()),
                    Optional.of(words.say("writing.test-with", "words", String.join(", ", set.indicators()))),
                    List.of(new KeyList(set.words().stream().map(AuthorGuidePages::entry).toList(), words.group("word-list")))));
        }
        sheet.add(new Section("media", words.say("writing.media"), Optional.of(words.say("writing.media-lead")), List.of(media(sheet))));
        sheet.add(new Section("end-points", words.say("writing.end-points"), Optional.of(words.say("writing.end-points-lead")),
                List.of(endPoints(sheet))));
        sheet.add(new Section("units", words.say("writing.units"), Optional.of(words.say("writing.units-lead")), List.of(units(sheet))));
        sheet.add(new Section("substances", words.say("writing.substances"), Optional.of(words.say("writing.substances-lead")),
                List.of(substances(sheet))));
        sheet.add(new Section("weighed", words.say("writing.weighed"), Optional.of(words.say("writing.weighed-lead")),
                List.of(weighed(sheet))));
        sheet.add(new Section("classes", words.say("writing.classes"), Optional.of(words.say("writing.classes-lead")),
                List.of(classes(sheet))));
        sheet.add(new Section("waste", words.say("writing.waste"), Optional.of(words.say("writing.waste-lead")), List.of(waste(sheet))));
        sheet.add(new Section("licences", words.say("writing.licences"), Optional.of(words.say("writing.licences-lead")),
                List.of(licences(sheet))));
        return closed(sheet, "words");
    }

    private Table endPoints(Sheet sheet) {
        Words words = sheet.words();
        return new Table("end-points-table", words.say("writing.end-points-written"), words.columns("writing.end-asks",
                "writing.written", "writing.end-example", "writing.end-read"), guide.endPoints().stream().map(one -> List.of(
                        RichText.of(one.asks()), code(one.written()), code(List.of(one.example())), RichText.of(one.read()))).toList(),
                Optional.empty());
    }

    /** By these words under 'is:' the rules know what a medium bears. */
    private Table media(Sheet sheet) {
        Words words = sheet.words();
        return new Table("media-table", words.say("writing.media-written"), words.columns("bench.tests-of", "writing.written"),
                desk.library().matrix().rows().stream().map(row -> List.of(RichText.of(row.name()), code(row.also()))).toList(),
                Optional.empty());
    }

    private static KeyList.Entry entry(TestWords.Word word) {
        return new KeyList.Entry(word.word(), false, word.means(), word.also().stream().map(KeyList.Word::plain).toList(),
                Optional.empty());
    }

    private static Table units(Sheet sheet) {
        Words words = sheet.words();
        Map<Dimension, List<String>> symbols = new LinkedHashMap<>();
        Stream.of(Unit.values()).filter(unit -> Unit.spelled(unit.symbol()).isPresent()).forEach(unit ->
                symbols.computeIfAbsent(unit.dimension(), any -> new ArrayList<>()).add(unit.symbol()));
        return new Table("units-table", words.say("writing.units-written"), List.of(new Table.Column(words.say("writing.of-kind"), false),
                new Table.Column(words.say("writing.written"), false)), symbols.entrySet().stream().map(one -> List.of(
                        RichText.of(one.getKey().words()), code(one.getValue()))).toList(), Optional.empty());
    }

    private Table substances(Sheet sheet) {
        Words words = sheet.words();
        return new Table("substances-table", words.say("writing.substances-written"), List.of(
                new Table.Column(words.say("writing.written"), false), new Table.Column(words.say("writing.also"), false)),
                desk.library().reference().substances().values().stream().map(one -> row(one, words)).toList(), Optional.empty());
    }

    private static List<RichText> row(Substance substance, Words words) {
        List<String> also = Stream.concat(substance.synonyms().stream(), substance.cas().stream()).toList();
        return List.of(code(List.of(substance.key())),
                RichText.of(also.isEmpty() ? words.say("writing.no-other") : String.join(", ", also)));
    }

    /** Which of the compared adhesives, tissues and so on a material of the studio is taken for. */
    private Table weighed(Sheet sheet) {
        Words words = sheet.words();
        return new Table("weighed-table", words.say("writing.weighed-written"), words.columns("writing.of-what", "writing.of-substance",
                "writing.of-name"), desk.library().reference().compared().stream().map(one -> List.of(RichText.of(one.name()),
                        codeOrNone(words, one.substances().stream().sorted().toList()), codeOrNone(words, one.named()))).toList(),
                Optional.empty());
    }

    private static RichText codeOrNone(Words words, List<String> written) {
        return written.isEmpty() ? RichText.of(words.say("writing.not-by-this")) : code(written);
    }

    private Table classes(Sheet sheet) {
        Words words = sheet.words();
        Reference reference = desk.library().reference();
        return new Table("classes-table", words.say("writing.classes-written"), words.columns("writing.written", "writing.means"),
                reference.hazardClasses().entrySet().stream().map(one -> List.of(code(List.of(one.getKey())),
                        RichText.of(one.getValue().stream().sorted().map(statement -> statement + " "
                                + reference.statements().get(statement).text()).collect(Collectors.joining(" ")))))
                        .toList(), Optional.empty());
    }

    private Table waste(Sheet sheet) {
        Words words = sheet.words();
        return new Table("waste-table", words.say("writing.waste-written"), words.columns("writing.written", "writing.means"),
                desk.library().reference().waste().values().stream().map(one -> List.of(code(List.of(one.key())),
                        RichText.of(one.words()))).toList(), Optional.empty());
    }

    private Table licences(Sheet sheet) {
        Words words = sheet.words();
        return new Table("licences-table", words.say("writing.licences-written"), words.columns("writing.written", "writing.means"),
                guide.licences().stream().map(one -> List.of(code(List.of(one.words())), RichText.of(means(one, words)))).toList(),
                Optional.empty());
    }

    private static String means(SourceLicence licence, Words words) {
        String terms = words.say(licence.allows() ? "writing.licence-allows" : "writing.licence-forbids");
        String onward = licence.onward().isEmpty() ? "" : words.say("writing.licence-onward", "licences",
                String.join(", ", licence.onward()));
        return Stream.of(Optional.of(terms), licence.keep(), Optional.of(onward)).flatMap(Optional::stream)
                .filter(text -> !text.isEmpty()).collect(Collectors.joining(" "));
    }

    private static RichText code(List<String> written) {
        return RichText.joined(", ", written.stream().map(one -> RichText.of(new Inline.Code(one))).toList());
    }

    private Page figures() {
        Sheet sheet = opened(FIGURES, "figures");
        Words words = sheet.words();
        sheet.add(new Section("how", words.say("writing.how"), Optional.empty(), List.of(new Prose(words.group("writing-cite")
                .values().stream().map(AuthorGuidePages::paragraph).toList()))));
        Map<String, List<KeyList.Entry>> groups = new LinkedHashMap<>();
        guide.figures().forEach(figure -> groups.computeIfAbsent(figure.of(), any -> new ArrayList<>()).add(
                new KeyList.Entry("{" + figure.cited() + "}", false, figure.means(), List.of(), Optional.empty())));
        groups.forEach((of, entries) -> sheet.add(new Section("of-" + Paths.slug(of), of, Optional.empty(),
                List.of(new KeyList(entries, words.group("key-list"))))));
        return closed(sheet, "figures");
    }
}

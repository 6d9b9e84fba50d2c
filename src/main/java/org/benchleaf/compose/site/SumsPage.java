package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.FormularyText;
import org.benchleaf.compose.part.Frames;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.model.Phrases;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.SumForm;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** Every calculation as a form that is worked in the page. */
public final class SumsPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("sums", Paths.SUMS, false);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME).script("calculator.js").script("sums.js");
        Words words = sheet.words();
        List<Method> methods = desk.library().formulary().methods();
        sheet.add(new Opening(Optional.empty(), words.say("way.sums"), Optional.of(words.say("sums.lead")), List.of(),
                Optional.of(new Opening.Notice(words.say("sums.needs"), words.say("sums.without")))));
        sheet.add(new LinkList(methods.stream().map(method -> new LinkList.Entry(
                Link.to(method.title(), "#" + anchor(method)), method.answers())).toList()));
        methods.forEach(method -> sheet.add(new Section(anchor(method), method.title(), Optional.of(method.answers()),
                List.of(form(sheet, method)))));
        return List.of(sheet.page(words.say("way.sums"), words.say("sums.lead")));
    }

    /**
     * What the calculations need to know, as a script that is loaded with them, and a script for each other language of the pages
     * with the words in which they answer there.
     *
     * @param others the words of each other language in which pages are told
     */
    public static List<DataFile> data(String language, Formulary formulary, List<Phrases> others) {
        Map<String, Object> speaking = new LinkedHashMap<>();
        others.forEach(phrases -> speaking.put(phrases.language(), name(phrases.language())));
        List<DataFile> files = new ArrayList<>();
        files.add(new DataFile(Paths.SUMS_DATA, "window.BENCHLEAF_SUMS = " + JsonText.script(JsonText.object(
                "formulary", FormularyText.of(formulary), "speaks", signs(language, ""), "others", speaking)) + ";\n"));
        others.forEach(phrases -> files.add(new DataFile(Paths.SUMS_DATA.replace("sums-data.js", name(phrases.language())),
                "window.BENCHLEAF_SUMS.speaks = " + JsonText.script(signs(phrases.language(), said(formulary, phrases))) + ";\n")));
        return files;
    }

    private static String name(String language) {
        return "sums-words." + language + ".js";
    }

    private static Map<String, Object> signs(String language, String said) {
        Words words = Words.in(language);
        return JsonText.object("mark", NumberText.in(words).fixed(0.5, 1).substring(1, 2), "weeks",
                words.counted("unit.weeks").line(),
                "words", said, "direction", Frames.direction(language));
    }

    /** A line for each text that the calculations may say: in English and in the language. */
    private static String said(Formulary formulary, Phrases phrases) {
        Stream<String> ofMethods = formulary.methods().stream().flatMap(method -> Stream.concat(
                method.outputs().stream().map(Method.Output::label), method.inputs().stream().flatMap(input -> Stream.concat(
                        Stream.of(input.label(), input.rangeSource()), input.words().stream()))));
        return Stream.concat(ofMethods, phrases.ofSums().stream()).filter(phrases.words()::containsKey).distinct().sorted()
                .map(text -> text + "\t" + phrases.ofProgram(text)).collect(Collectors.joining("\n"));
    }

    private static String anchor(Method method) {
        return "sum-" + Paths.slug(method.name());
    }

    private static SumForm form(Sheet sheet, Method method) {
        return new SumForm(method.name(), method.title(), method.formula(), method.range(),
                sheet.link(sheet.words().say("sums.method"), Paths.METHODS + "#" + WorkingMaker.methodAnchor(method.name())),
                method.inputs().stream().map(input -> field(sheet, input)).toList(), sheet.words().group("sums"));
    }

    private static SumForm.Field field(Sheet sheet, Method.Input input) {
        Optional<Unit> unit = exampleUnit(input);
        Phrases phrases = sheet.library().phrases();
        Map<String, String> choices = new LinkedHashMap<>();
        input.words().forEach(word -> choices.put(word, phrases.ofProgram(word)));
        return new SumForm.Field(input.key(), input.label(), MethodsPage.allowed(sheet, input), input.usual().map(phrases::ofProgram),
                phrases.ofProgram(input.example()), choices, units(input), unit.map(Unit::symbol).orElse(""), input.required());
    }

    /** The units of all kinds that may be put in; none where a bare number will do. */
    private static List<String> units(Method.Input input) {
        List<String> units = new ArrayList<>();
        Arrays.stream(Unit.values()).filter(unit -> input.dimensions().contains(unit.dimension())).map(Unit::symbol)
                .filter(symbol -> !symbol.equals("pH") && Unit.spelled(symbol).isPresent()).forEach(units::add);
        return units;
    }

    private static Optional<Unit> exampleUnit(Method.Input input) {
        return input.dimensions().stream().map(dimension -> QuantityReader.read(first(input.example()), dimension).quantity())
                .flatMap(Optional::stream).map(Quantity::unit).findFirst();
    }

    /** The first of a list of values. */
    private static String first(String example) {
        int comma = example.indexOf(", ");
        return comma < 0 ? example : example.substring(0, comma);
    }
}

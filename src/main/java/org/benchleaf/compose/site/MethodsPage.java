package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Method;
import org.benchleaf.page.Block;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;
import org.benchleaf.words.Words;

/** How each figure is worked out, and where that holds. */
public final class MethodsPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("methods", Paths.METHODS, false);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        Set<String> checked = desk.checks().stream().map(CheckValues::calculation).collect(Collectors.toSet());
        sheet.add(Opening.plain(words.say("way.methods"), words.say("methods.lead")));
        Map<String, List<Method>> subjects = new LinkedHashMap<>();
        Stream.concat(desk.library().formulary().methods().stream(), desk.library().formulary().plainMethods().stream())
                .forEach(method -> subjects.computeIfAbsent(method.subject(), any -> new ArrayList<>()).add(method));
        sheet.add(contents(words, subjects));
        subjects.values().forEach(methods -> methods.forEach(method ->
                sheet.add(section(sheet, method, checked.contains(method.name())))));
        return List.of(sheet.page(words.say("way.methods"), words.say("methods.lead")));
    }

    /** The methods by subject, each a line that leads to its place. */
    private static Section contents(Words words, Map<String, List<Method>> subjects) {
        return new Section("contents", words.say("methods.contents"), Optional.empty(), List.of(new LinkGroups(subjects.entrySet().stream()
                .map(subject -> new LinkGroups.Group("subject-" + Paths.slug(subject.getKey()), subject.getKey(),
                        subject.getValue().stream()
                        .map(method -> new LinkGroups.Entry(Link.to(method.title(), "#" + WorkingMaker.methodAnchor(method.name())), ""))
                        .toList())).toList())));
    }

    private static Section section(Sheet sheet, Method method, boolean checked) {
        String id = WorkingMaker.methodAnchor(method.name());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(formula(sheet, method).stream().map(Prose.Passage::of).toList()));
        blocks.add(new Facts(facts(sheet, method, checked)));
        if (!method.inputs().isEmpty()) {
            blocks.add(inputs(sheet, method, id));
        }
        return new Section(id, method.title(), Optional.of(method.answers()).filter(text -> !text.isBlank()), blocks);
    }

    private static List<TextBlock> formula(Sheet sheet, Method method) {
        TextBlock plain = new TextBlock.Paragraph(List.of(new Inline.Code(method.formula())));
        return method.mathml().isBlank() ? List.of(plain)
                : List.of(new TextBlock.Formula(method.mathml(), sheet.words().say("formula.label", "name", method.title())), plain);
    }

    private static List<Fact> facts(Sheet sheet, Method method, boolean checked) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        if (!method.range().isBlank()) {
            facts.add(Fact.of(words.say("methods.range"), method.range()));
        }
        if (!method.outputs().isEmpty()) {
            facts.add(Fact.of(words.say("methods.gives"), method.outputs().stream()
                    .map(output -> output.unit() == Unit.NONE || output.unit() == Unit.COUNT ? output.label()
                            : words.say("methods.in-unit", "what", output.label(), "unit", output.unit().symbol()))
                    .collect(Collectors.joining("; "))));
        }
        method.caveats().forEach(caveat -> facts.add(Fact.of(words.say("working.caveats"), caveat)));
        List<RichText> sources = method.sources().stream().map(sheet::cite).flatMap(Optional::stream).map(Citation::link)
                .map(RichText::of).toList();
        if (!sources.isEmpty()) {
            facts.add(new Fact(words.say("working.sources"), RichText.joined("; ", sources)));
        }
        if (checked) {
            facts.add(new Fact(words.say("methods.checked"), RichText.of(Inline.Hyperlink.to(CheckedPage.href(method),
                    words.say("methods.checked-caption", "method", method.title())))));
        }
        return facts;
    }

    private static Table inputs(Sheet sheet, Method method, String id) {
        Words words = sheet.words();
        List<List<RichText>> rows = new ArrayList<>();
        for (Method.Input input : method.inputs()) {
            rows.add(List.of(RichText.of(input.label()), RichText.of(new Inline.Code(input.key())),
                    RichText.of(allowed(sheet, input)),
                    RichText.of(input.usual().orElse(words.say(input.required() ? "methods.must" : "methods.may")))));
        }
        return new Table(id + "-inputs", words.say("methods.inputs-caption", "method", method.title()), List.of(
                new Table.Column(words.say("working.given"), false), new Table.Column(words.say("methods.key"), false),
                new Table.Column(words.say("methods.allowed"), false),
                new Table.Column(words.say("methods.usual"), false)), rows, Optional.empty());
    }

    /** The words of an input, or its range with unit and source. */
    static String allowed(Sheet sheet, Method.Input input) {
        Words words = sheet.words();
        if (!input.words().isEmpty()) {
            return words.list(input.words().stream().map(sheet.library().phrases()::of).toList());
        }
        String unit = input.unit().map(Unit::symbol).orElse("");
        Optional<String> low = input.low().map(sheet.numbers()::number);
        Optional<String> high = input.high().map(sheet.numbers()::number);
        String range = low.isPresent() && high.isPresent()
                ? words.say("methods.from-to", "low", low.get(), "high", high.get(), "unit", unit)
                : low.map(end -> words.say("methods.from", "low", end, "unit", unit))
                        .or(() -> high.map(end -> words.say("methods.up-to", "high", end, "unit", unit))).orElse(unit);
        if (range.isBlank()) {
            return words.say("methods.any");
        }
        return input.rangeSource().isBlank() ? range : range + " (" + input.rangeSource() + ")";
    }
}

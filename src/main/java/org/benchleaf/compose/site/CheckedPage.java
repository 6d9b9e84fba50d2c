package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.CheckedValues;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Method;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** How near each calculation comes to what others published; by itself, because it is as long as the methods. */
public final class CheckedPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("checked", Paths.CHECKED, false);

    @Override
    public SitePageName name() {
        return NAME;
    }

    /** The way from the page of methods to the values of one. */
    static String href(Method method) {
        return Paths.CHECKED + "#" + WorkingMaker.methodAnchor(method.name());
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        Map<String, CheckValues> checks = desk.checks().stream()
                .collect(Collectors.toMap(CheckValues::calculation, values -> values));
        Calculations calculations = new Calculations(desk.library().formulary());
        sheet.add(Opening.plain(words.say("way.checked"), words.say("checked.lead")));
        for (Method method : desk.library().formulary().methods()) {
            Optional.ofNullable(checks.get(method.name())).map(values -> CheckedValues.of(calculations, values))
                    .filter(compared -> !compared.isEmpty()).ifPresent(compared -> sheet.add(new Section(
                            WorkingMaker.methodAnchor(method.name()), method.title(), Optional.empty(),
                            List.of(table(sheet, method, compared)))));
        }
        return List.of(sheet.page(words.say("way.checked"), words.say("checked.lead")));
    }

    private static Table table(Sheet sheet, Method method, List<CheckedValues.Compared> compared) {
        Words words = sheet.words();
        List<List<RichText>> rows = new ArrayList<>();
        for (CheckedValues.Compared one : compared) {
            String inputs = one.value().inputs().entrySet().stream()
                    .map(entry -> entry.getKey() + " " + entry.getValue()).collect(Collectors.joining("; "));
            rows.add(List.of(RichText.of(inputs), RichText.of(one.value().output()),
                    RichText.of(one.value().expected()), RichText.of(obtained(sheet, one)),
                    RichText.of(Double.isInfinite(one.difference()) ? words.say("methods.differs")
                            : sheet.numbers().rough(one.difference())),
                    RichText.of(sheet.numbers().number(one.value().tolerance())),
                    RichText.of(words.say("methods.source", "source", one.value().source(), "status",
                            words.term("source-status", one.value().status())))));
        }
        return new Table(WorkingMaker.methodAnchor(method.name()) + "-checked",
                words.say("methods.checked-caption", "method", method.title()), List.of(
                new Table.Column(words.say("methods.put-in"), false), new Table.Column(words.say("methods.output"), false),
                new Table.Column(words.say("methods.expected"), true), new Table.Column(words.say("methods.obtained"), true),
                new Table.Column(words.say("methods.difference"), true), new Table.Column(words.say("methods.tolerance"), true),
                new Table.Column(words.say("methods.where"), false)), rows, Optional.empty());
    }

    /** As many digits as the published value has, and two more, so that the difference can be seen. */
    private static String obtained(Sheet sheet, CheckedValues.Compared one) {
        try {
            int point = one.value().expected().indexOf('.');
            int decimals = point < 0 || one.value().expected().contains("e") ? -1
                    : one.value().expected().length() - point - 1;
            double number = Double.parseDouble(one.obtained());
            return decimals < 0 ? sheet.numbers().rough(number) : sheet.numbers().fixed(number, decimals + 2);
        } catch (NumberFormatException words) {
            return one.obtained();
        }
    }
}

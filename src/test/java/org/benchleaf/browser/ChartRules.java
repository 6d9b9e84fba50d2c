package org.benchleaf.browser;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** What charts and tables owe a reader who sees only one of them. */
final class ChartRules {

    private static final Pattern NUMBER = Pattern.compile("[-\u2212]?\\d+(?:[.,]\\d+)*");

    private ChartRules() {
    }

    static List<PageRule> all() {
        return List.of(
                new PageRule("charts are named and described", "1.1.1", ChartRules::namelessCharts),
                new PageRule("chart equals its table", "1.1.1", ChartRules::chartsUnlikeTheirTables),
                new PageRule("series differ by more than colour", "1.4.1", ChartRules::seriesByColour),
                new PageRule("map marks equal their list", "1.1.1", ChartRules::marksUnlikeTheirList),
                new PageRule("tables have captions", "1.3.1", page -> page.all("table")
                        .filter(table -> table.select("> caption").stream().noneMatch(Element::hasText))
                        .map(WrittenPage::shown)),
                new PageRule("headers say what they head", "1.3.1", page -> page.all("th:not([scope=col]):not([scope=row])")
                        .map(WrittenPage::shown)),
                new PageRule("one value a cell, one row of headers", "house", page -> Stream.concat(
                        page.all("table [colspan], table [rowspan]"), page.all("thead tr + tr")).map(WrittenPage::shown)),
                new PageRule("wide tables scroll in a named frame", "1.4.10, 2.1.1", page -> page.all("table")
                        .filter(table -> table.closest("[role=region][tabindex=0][aria-labelledby]") == null)
                        .map(WrittenPage::shown)),
                new PageRule("an empty cell says why", "house", page -> page.all("td")
                        .filter(cell -> cell.text().strip().matches("[-\u2013\u2014]?") && cell.select("img, svg, input").isEmpty()
                                && cell.closest("[class*=blank], [class*=write], [class*=fill]") == null)
                        .map(cell -> "in the row " + WrittenPage.shown(cell.parent()))));
    }

    private static Stream<String> namelessCharts(WrittenPage page) {
        return page.all("svg").filter(drawing -> {
            boolean named = drawing.attr("role").equals("img") && drawing.select("> title").hasText()
                    && (drawing.closest("[class*=pictogram]") != null || drawing.select("> desc").hasText())
                    && Stream.of(drawing.attr("aria-labelledby").split(" ")).allMatch(id ->
                            !id.isEmpty() && drawing.getElementById(id) != null);
            return !named || !drawing.select("a").isEmpty();
        }).filter(drawing -> drawing.closest("[class*=pictogram]") == null || !drawing.hasAttr("aria-label"))
                .map(WrittenPage::shown);
    }

    private static Stream<Element> charts(WrittenPage page) {
        return page.all("svg[role=img]").filter(drawing -> drawing.hasAttr("data-table")
                || drawing.selectFirst("[data-value]") != null || drawing.className().contains("chart")
                || drawing.className().contains("plot") || drawing.className().contains("timeline"));
    }

    private static Stream<String> chartsUnlikeTheirTables(WrittenPage page) {
        return charts(page).flatMap(chart -> {
            Element table = page.html().getElementById(chart.attr("data-table"));
            if (chart.attr("data-table").isEmpty() || table == null) {
                return Stream.of(WrittenPage.shown(chart) + " has no table");
            }
            Set<String> told = numbers(table.text());
            Set<String> drawn = new HashSet<>();
            chart.select("[data-value]").forEach(mark -> drawn.addAll(numbers(mark.attr("data-value"))));
            if (drawn.isEmpty()) {
                return Stream.of(WrittenPage.shown(chart) + " tells no values");
            }
            return drawn.stream().filter(number -> !told.contains(number))
                    .map(number -> number + " is drawn and is not in the table " + chart.attr("data-table"));
        });
    }

    private static Set<String> numbers(String text) {
        Set<String> numbers = new HashSet<>();
        Matcher found = NUMBER.matcher(text);
        while (found.find()) {
            numbers.add(found.group().replace('\u2212', '-'));
        }
        return numbers;
    }

    /** Two series whose marks have the same shape and no words beside them. */
    private static Stream<String> seriesByColour(WrittenPage page) {
        return charts(page).flatMap(chart -> {
            List<Element> series = chart.select("g[data-series]");
            Set<String> shapes = new HashSet<>();
            return series.stream().filter(one -> !shapes.add(shape(one)))
                    .map(one -> one.attr("data-series") + " looks like another series of " + WrittenPage.shown(chart));
        });
    }

    private static String shape(Element series) {
        Element mark = series.selectFirst("circle, rect, path, line, polyline, polygon, use");
        String words = series.select("text").text();
        String kind = mark == null ? "" : mark.tagName() + mark.attr("stroke-dasharray") + mark.attr("href")
                + (mark.tagName().equals("path") ? mark.attr("d").replaceAll("[\\d.\\s,-]+", "") : "");
        return kind + words;
    }

    private static Stream<String> marksUnlikeTheirList(WrittenPage page) {
        return page.all(".condition-map").filter(map -> map.selectFirst("svg") != null).flatMap(map -> {
            int entries = map.select("ol > li").size();
            return map.select("svg text").stream().map(Element::text).filter(text -> text.matches("\\d+"))
                    .filter(text -> Integer.parseInt(text) < 1 || Integer.parseInt(text) > entries)
                    .map(text -> "mark " + text + " has no entry in the list of " + entries);
        });
    }
}

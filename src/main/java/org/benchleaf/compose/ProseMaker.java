package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.derive.Figure;
import org.benchleaf.model.Story;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Node;

/** Makes prose of a story's HTML: cited figures become numbers that lead to their working, terms become links. */
final class ProseMaker {

    private static final Pattern MARK =
            Pattern.compile(Story.FIGURE_START + "([^" + Story.FIGURE_START + Story.FIGURE_END + "]*+)" + Story.FIGURE_END);

    private final Sheet sheet;

    ProseMaker(Sheet sheet) {
        this.sheet = sheet;
    }

    Prose make(String html) {
        Document document = Jsoup.parseBodyFragment(html);
        document.outputSettings().prettyPrint(false);
        document.select("a[href]").forEach(link -> link.attr("href", sheet.rebased(link.attr("href"))));
        List<Prose.Passage> passages = new ArrayList<>();
        for (Node node : document.body().childNodes()) {
            if (!node.outerHtml().isBlank()) {
                passages.add(passage(node.outerHtml()));
            }
        }
        return new Prose(passages);
    }

    private Prose.Passage passage(String html) {
        List<Working> workings = new ArrayList<>();
        Matcher mark = MARK.matcher(html);
        StringBuilder told = new StringBuilder();
        while (mark.find()) {
            Figure figure = sheet.figure(mark.group(1)).orElseThrow(() -> new IllegalStateException(
                    "the story cites a figure that was not worked out: " + mark.group(1)));
            if (!sheet.shows(figure.id())) {
                workings.add(new WorkingMaker(sheet).make(figure));
            }
            mark.appendReplacement(told, Matcher.quoteReplacement(number(figure)));
        }
        // Numbers first: a figure's name may hold a term of the glossary.
        return new Prose.Passage(sheet.linked(new Html(mark.appendTail(told).toString())), workings);
    }

    /** The number leads to the inside of its working, because browsers open a closed disclosure for such a link. */
    private String number(Figure figure) {
        return "<a class=\"number\" href=\"#" + Paths.working(figure.id()) + "\"><bdi>"
                + Html.escape(sheet.amount(figure).text()) + "</bdi></a>";
    }
}

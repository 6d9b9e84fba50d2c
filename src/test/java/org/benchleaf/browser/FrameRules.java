package org.benchleaf.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** How a page is built: its head, landmarks, headings, closed parts, controls and status lines. */
final class FrameRules {

    private static final String SAFETY = "[class~=--(danger|care|caution|warning|hold|stop)\\b], "
            + "[class~=hazard\\w*__(says|word|signal)], [class~=protect|equipment], [class*=pictogram], img[src~=(?i)ghs0]";

    private FrameRules() {
    }

    static List<PageRule> all() {
        return List.of(
                new PageRule("the page is named", "2.4.2, 3.1.1", FrameRules::namelessPage),
                new PageRule("landmarks stand", "1.3.1, 2.4.1", FrameRules::missingLandmarks),
                new PageRule("headings go down by one", "1.3.1, 2.4.6", FrameRules::skippedHeadings),
                new PageRule("ids are given once", "HTML 3.2.6", page -> page.find("[id]").stream()
                        .filter(element -> page.html().getElementsByAttributeValue("id", element.id()).size() > 1)
                        .map(element -> "#" + element.id()).distinct()),
                new PageRule("zoom is free", "1.4.4, 1.3.4", page -> page.all("meta[name=viewport]")
                        .filter(meta -> meta.attr("content").matches("(?i).*(user-scalable\\s*=\\s*(no|0)|maximum-scale).*"))
                        .map(Element::outerHtml)),
                new PageRule("closed parts hold only extras", "house", FrameRules::hiddenCare),
                new PageRule("no heading in a summary", "house: one screen reader drops it", page -> page.all(
                        "summary h1, summary h2, summary h3, summary h4, summary [role=heading]").map(WrittenPage::shown)),
                new PageRule("status lines are ready", "4.1.3", FrameRules::statusLines),
                new PageRule("controls have labels", "1.3.1, 3.3.2", FrameRules::unlabelled),
                new PageRule("languages are plain links", "3.2.2, 3.1.2", FrameRules::languageSwitch),
                new PageRule("nothing plays or moves", "2.2.2, 1.4.2", page -> page.all(
                        "marquee, blink, [autoplay], meta[http-equiv=refresh], animate, animateTransform, animateMotion, "
                        + "img[src$=.gif]").map(Element::outerHtml)),
                new PageRule("what programs read is what people read", "house", FrameRules::hiddenData));
    }

    /**
     * The briefing tells every danger openly and opens to the rest; a step may open to what the briefing tells, or the page
     * tells openly elsewhere, and to nothing else of care.
     */
    private static Stream<String> hiddenCare(WrittenPage page) {
        Element open = page.html().clone();
        open.select("details").remove();
        String here = here(page.html().selectFirst("html").attr("lang"));
        String told = page.html().select("#briefing").text() + open.text();
        return page.all("details").flatMap(part -> part.children().select(SAFETY).stream().filter(fact ->
                part.is("#briefing .briefing__part") ? fact.is(".note--danger")
                        : !part.is(".strip__care, .screen__care") || !told.contains(withoutBottles(fact.text(), here))))
                .map(fact -> "in a closed part: " + WrittenPage.shown(fact));
    }

    /** A caution up to the names of what it is due for, which are fewer at a step. */
    private static String withoutBottles(String caution, String here) {
        int names = caution.indexOf(here);
        return names < 0 ? caution : caution.substring(0, names);
    }

    /** What a language says before those names, in English where the program has no words of its own for it. */
    private static String here(String language) {
        Properties words = new Properties();
        URL own = FrameRules.class.getResource("/words/interface_" + language + ".properties");
        try (InputStream file = own == null ? FrameRules.class.getResourceAsStream("/words/interface_en.properties") : own.openStream()) {
            words.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return " " + words.getProperty("bench.caution-of").replaceFirst("\\{things}.*", "");
    }

    private static Stream<String> namelessPage(WrittenPage page) {
        Element root = page.html().selectFirst("html");
        Element description = page.html().selectFirst("meta[name=description]");
        return Stream.of(
                root.attr("lang").matches("[a-z]{2,3}(-.+)?") ? "" : "lang=\"" + root.attr("lang") + "\"",
                page.html().title().contains(" - ") || page.path().equals("index.html") ? ""
                        : "the title \"" + page.html().title() + "\" is not \"what - site\"",
                page.html().title().isBlank() ? "no title" : "",
                description == null || description.attr("content").isBlank() ? "no description" : "",
                page.find("h1").size() == 1 ? "" : page.find("h1").size() + " headings of the first level")
                .filter(fault -> !fault.isEmpty());
    }

    private static Stream<String> missingLandmarks(WrittenPage page) {
        Element first = page.html().body().selectFirst("a[href], button, input");
        boolean skips = first != null && first.attr("href").startsWith("#")
                && page.html().getElementById(first.attr("href").substring(1)) != null;
        Stream<String> missing = Stream.of("body > header", "body > main", "body > footer", "nav")
                .filter(landmark -> !page.has(landmark)).map(landmark -> "no " + landmark);
        Stream<String> unnamed = page.all("nav:not([aria-label]):not([aria-labelledby])").map(WrittenPage::shown);
        return Stream.of(missing, unnamed, skips ? Stream.<String>of() : Stream.of("the first link does not skip to the content"))
                .flatMap(all -> all);
    }

    private static Stream<String> skippedHeadings(WrittenPage page) {
        Stream.Builder<String> found = Stream.builder();
        int before = 0;
        for (Element heading : page.find("h1, h2, h3, h4, h5, h6")) {
            int level = heading.tagName().charAt(1) - '0';
            if (level > before + 1) {
                found.add(WrittenPage.shown(heading) + " follows level " + before);
            }
            before = level;
        }
        return found.build();
    }

    private static Stream<String> statusLines(WrittenPage page) {
        Stream<String> wrong = page.all("[role=status], [role=alert]").filter(line -> !line.is("p, span, div")
                || !page.live() && line.hasText()).map(WrittenPage::shown);
        Stream<String> output = page.all("output, [aria-live]:not([role])").map(WrittenPage::shown);
        Stream<String> loud = page.all("[role=timer][aria-live]:not([aria-live=off])").map(WrittenPage::shown);
        long timers = page.all("[data-timer], [role=timer]").filter(timer -> timer.select("[data-timer]").size() <= 1).count();
        boolean speaks = page.has("[role=status]");
        Stream<String> missing = (page.has("[data-search]") || timers > 0) && !speaks
                ? Stream.of("what changes on this page is told nowhere: no role=status") : Stream.of();
        return Stream.of(wrong, output, loud, missing).flatMap(all -> all);
    }

    private static Stream<String> unlabelled(WrittenPage page) {
        return page.all("input:not([type=hidden]):not([type=submit]), select, textarea").filter(control ->
                control.closest("label") == null && !control.hasAttr("aria-labelledby") && !control.hasAttr("aria-label")
                        && page.find("label[for=" + (control.id().isEmpty() ? "-" : control.id()) + "]").isEmpty())
                .map(WrittenPage::shown);
    }

    private static Stream<String> languageSwitch(WrittenPage page) {
        return page.all("nav select, [hreflang]:not([lang]):not(link)").map(WrittenPage::shown);
    }

    /** Names, texts and amounts in the data for programs stand in the page's own words too. */
    private static Stream<String> hiddenData(WrittenPage page) {
        String seen = spaced(page.html().title() + " " + page.html().body().text());
        return page.find("script[type=application/ld+json]").stream().flatMap(script ->
                LinkedData.textsOf(script.data()).stream()).map(FrameRules::spaced)
                .filter(text -> !seen.contains(text)).map(text -> "not on the page: " + text);
    }

    /** Pages have the signs of their language; what programs read keeps the comma and the semicolon of its source. */
    private static String spaced(String text) {
        return text.replaceAll("[\\s\u00a0\u202f]+", " ").replace('\u060c', ',').replace('\u061b', ';').strip();
    }
}

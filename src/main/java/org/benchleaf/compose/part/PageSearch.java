package org.benchleaf.compose.part;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.benchleaf.json.JsonText;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.words.Words;
import org.jsoup.nodes.Element;
import org.jsoup.select.Evaluator;
import org.jsoup.select.QueryParser;

/**
 * What the search takes from a finished page: the stems of its words for the index, and its sentences, which the search shows
 * and which lie in a file beside the page.
 */
public final class PageSearch {

    private static final String SENTENCES = "-sentences.js";
    private static final String PAGE = ".html";
    /**
     * What is not the page's own words: frames, workings with their formulas, lines of a file shown as an example, addresses of sources,
     * lists of cases and substances, names of sources and what compared materials are said to be, which have pages themselves;
     * tables of words that only an author of files writes; captions of line drawings, which tell from where one looks; lists
     * of what to lay out, whose things stand at the steps and on pages of their own; columns of files; rules that were met, which have
     * a page of their own; advice for the owner on a case study, which has a page of its own too.
     */
    private static final Evaluator NOT_READ = QueryParser.parse("script, style, svg, math, pre, nav, "
            + "#compared, #substances-table, #compared-fire, #compared-used, #classes-table, #waste-table, #weighed-table, "
            + "#key-condition, #key-field, #lay-out-table, #more .facts, #findings-kept, "
            + "a[href*=sources.html#], .bibliography__where, .bibliography__status, .bibliography__cited, .working__body, .case-list, "
            + ".case-lines, .drawing-row, .link-groups, .search-form, .opening__notice, #home, [hidden], [aria-hidden=true]");
    private static final Evaluator TO_CASES = QueryParser.parse("a[href^=cases/], a[href*=/cases/]");
    private static final Evaluator BLOCKS =
            QueryParser.parse("h1, h2, h3, h4, p, li, dt, dd, th, td, caption, figcaption, summary, legend, label");
    /** What a link can lead to: a part of the page, not its heading, so that the heading is in sight. */
    private static final Evaluator PARTS = QueryParser.parse("[id]:not(main, h1, h2, h3, h4, caption, summary)");
    private static final Evaluator HEADINGS = QueryParser.parse("h1, h2, h3, h4, dt, th, caption, summary, .opening__summary");
    /** A word that stands so often on a page is what the page is about (common practice, no source). */
    private static final int OFTEN = 5;
    private static final int LONGEST_SENTENCE = 300;

    /**
     * A sentence and where it stands.
     *
     * @param anchor of the nearest part of the page around it; empty at its head
     */
    private record Sentence(String anchor, String text) {
    }

    private final Page page;
    private final List<Sentence> sentences = new ArrayList<>();
    private final Set<String> strong = new LinkedHashSet<>();
    private final Map<String, Integer> counted = new HashMap<>();

    private PageSearch(Page page) {
        this.page = page;
    }

    /** Reads a page. */
    public static PageSearch of(Page page, PageTree finished) {
        PageSearch search = new PageSearch(page);
        search.read(finished.copy().selectFirst("main"));
        return search;
    }

    private void read(Element main) {
        main.select(NOT_READ).remove();
        if (page.caseId().isEmpty()) {
            // The search finds a case by its own pages, and what names it elsewhere must not outlast it.
            main.select(TO_CASES).remove();
        }
        Stems stems = Stems.in(page.language());
        strong.addAll(stems.of(page.title()));
        strong.addAll(stems.of(page.description()));
        main.select(HEADINGS).forEach(heading -> strong.addAll(stems.of(heading.text())));
        stems.of(main.text()).forEach(stem -> counted.merge(stem, 1, Integer::sum));
        counted.forEach((stem, times) -> {
            if (times >= OFTEN) {
                strong.add(stem);
            }
        });
        BreakIterator ends = BreakIterator.getSentenceInstance(Locale.forLanguageTag(page.language()));
        Set<String> seen = new HashSet<>();
        main.select(BLOCKS).stream().filter(block -> block.select(BLOCKS).size() == 1).forEach(block ->
                split(block.text(), ends).stream().filter(seen::add).forEach(text -> sentences.add(new Sentence(anchor(block), text))));
    }

    private static String anchor(Element block) {
        Element part = block.closest(PARTS);
        return part == null ? "" : part.id();
    }

    private static List<String> split(String text, BreakIterator ends) {
        ends.setText(text);
        List<String> parts = new ArrayList<>();
        int from = ends.first();
        for (int to = ends.next(); to != BreakIterator.DONE; from = to, to = ends.next()) {
            String sentence = text.substring(from, to).strip();
            if (sentence.indexOf(' ') > 0) {
                parts.add(sentence.length() <= LONGEST_SENTENCE ? sentence : sentence.substring(0, LONGEST_SENTENCE) + "…");
            }
        }
        return parts;
    }

    /**
     * The entry of the page in the index.
     *
     * @param title by which it is listed
     */
    public SearchEntry entry(String title) {
        Words words = Words.in(page.language());
        Stems stems = Stems.in(page.language());
        strong.addAll(stems.of(title));
        Set<String> weak = new HashSet<>(counted.keySet());
        weak.removeAll(strong);
        return new SearchEntry(page.path(), page.kind(), title, words.say("search.kind-" + page.kind()), "", WordList.packed(strong),
                WordList.packed(weak));
    }

    /** The page's sentences, each with the anchor of the part in which it stands, as a script, for no page may fetch. */
    public DataFile sentences() {
        StringBuilder list = new StringBuilder("BENCHLEAF_SENTENCES(").append(JsonText.script(page.path())).append(", [\n");
        sentences.forEach(sentence -> list.append(JsonText.script(List.of(sentence.anchor(), sentence.text()))).append(",\n"));
        return new DataFile(sentencesOf(page.path()), list.append("]);\n").toString());
    }

    private static String sentencesOf(String path) {
        return path.substring(0, path.length() - PAGE.length()) + SENTENCES;
    }

    /** The path of the page whose sentences are in a file; of another file, its own path. */
    static String page(String path) {
        return path.endsWith(SENTENCES) ? path.substring(0, path.length() - SENTENCES.length()) + PAGE : path;
    }
}

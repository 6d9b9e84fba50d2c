package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Phrases;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.QuantityRuns;
import org.benchleaf.words.TypeSetting;
import org.benchleaf.words.Words;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.Evaluator;
import org.jsoup.select.NodeTraversor;
import org.jsoup.select.QueryParser;

/**
 * Finds on a finished page of a translation what still stands in the language of the original, and marks it with that language,
 * so that it is spoken rightly and seen to be untranslated. A text that stands in both pages letter by letter is the original's,
 * unless the words of the interface are alike in both languages or it holds no word at all.
 */
public final class ForeignWords {

    private static final Evaluator APART = QueryParser.parse("script, style, code, pre, math, [lang]:not(html)");
    /** Turned themselves, these would begin at the other edge, away from the rest of their row or list. */
    private static final Set<String> IN_A_ROW = Set.of("td", "th", "dt", "dd", "li", "caption");
    private static final Evaluator ELSEWHERE = QueryParser.parse("[lang]:not(html)");
    /** Attributes that are read out. */
    private static final List<String> HEARD = List.of("aria-label", "alt", "title", "placeholder");
    private static final Set<String> WHOLE_ONLY = Set.of("title", "desc", "text", "tspan", "option", "button", "textarea");
    /** A code such as H319, CC-BY-4.0 or CIEDE2000 is of no language. */
    private static final Pattern CODE = Pattern.compile("(?<![\\p{L}\\p{N}])[\\p{Lu}\\p{N}][\\p{Lu}\\p{N}.-]*+(?![\\p{L}\\p{N}])");
    private static final Pattern UNIT = Pattern.compile("(?<![\\p{L}])(?:" + Stream.of(Unit.values()).map(Unit::symbol)
            .filter(symbol -> !symbol.isEmpty()).sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote)
            .collect(Collectors.joining("|")) + ")(?![\\p{L}])");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2}");
    private static final Pattern ANY_WORD = Pattern.compile("(?<![\\p{L}\\p{M}\\p{N}°])\\p{L}[\\p{L}\\p{M}'’-]*+(?!\\p{N})");
    private static final Pattern ENTRY = Pattern.compile("^\\d++\\. ");
    private static final Pattern BLANKS = Pattern.compile("\\s++");

    private final String language;
    private final String original;
    private final Set<String> own;

    /**
     * For pages of a language.
     *
     * @param language BCP 47 tag of the pages
     * @param original that of the pages from which they are translated
     * @param phrases what the program itself says in the language
     */
    public ForeignWords(String language, String original, Phrases phrases) {
        this.language = language;
        this.original = original;
        Words words = Words.in(language);
        Stream<String> ofInterface = words.language().equals(Locale.forLanguageTag(language).getLanguage()) ? words.all().stream()
                : Stream.empty();
        this.own = Stream.of(ofInterface, phrases.words().values().stream(), phrases.ownWords().values().stream())
                .flatMap(one -> one).map(ForeignWords::bare).collect(Collectors.toSet());
    }

    /**
     * What of a page can stand in its translations too, whatever their language.
     *
     * @param texts each as a whole
     * @param pairs of words that follow each other in one of them
     * @param alts the words of its pictures
     */
    public record Original(Set<String> texts, Set<String> pairs, Set<String> alts) {

        /** What the page holds. */
        public static Original of(PageTree page) {
            Set<String> texts = new HashSet<>();
            ForeignWords.texts(page.shown().body()).forEach(text -> texts.add(plain(text.getWholeText())));
            return new Original(texts, texts.stream().flatMap(text -> ForeignWords.pairs(text).stream()).collect(Collectors.toSet()),
                    new HashSet<>(page.shown().select("img[alt]").eachAttr("alt")));
        }
    }

    /**
     * A page with its marks.
     *
     * @param html its text
     * @param tree what reading it gives
     */
    public record Marked(String html, PageTree tree) {
    }

    /** The page with the marks, set as its language is; numbers with their units are set apart where it runs from right to left. */
    public Marked marked(String html, Original source) {
        Document page = PageTree.read(html);
        texts(page.body()).forEach(text -> {
            if (isOriginal(plain(text.getWholeText()), source.texts())) {
                markWhole(text);
            } else {
                markRuns(text, source.pairs());
            }
        });
        page.select("img[alt]").stream().filter(picture -> isOriginal(picture.attr("alt"), source.alts()))
                .forEach(picture -> picture.attr("lang", original));
        page.body().select("[lang]:not([dir])").stream().filter(each -> isTurned(each.attr("lang")) && each.closest("svg") == null)
                .forEach(each -> each.attr("dir", Frames.direction(each.attr("lang"))));
        TypeSetting setting = TypeSetting.in(Words.in(language));
        texts(page.body()).forEach(setting::set);
        page.select("math mn").forEach(number -> number.text(setting.set(number.text())));
        HEARD.forEach(name -> page.body().select("[" + name + "]").stream().filter(each -> each.closest(ELSEWHERE) == null)
                .forEach(each -> each.attr(name, setting.set(each.attr(name)))));
        if (Frames.direction(language).equals("rtl")) {
            texts(page.body()).forEach(QuantityRuns::isolate);
        }
        return new Marked(page.outerHtml() + "\n", PageTree.written(page));
    }

    private boolean isOriginal(String text, Set<String> texts) {
        return texts.contains(text) && !own.contains(bare(text)) && holdsWords(text);
    }

    private static boolean holdsWords(String text) {
        return WORD.matcher(UNIT.matcher(CODE.matcher(text).replaceAll("")).replaceAll("")).find();
    }

    /** Marks its parent if that holds nothing else and keeps its place when it is turned. */
    private void markWhole(TextNode text) {
        Element parent = text.parent();
        boolean keepsItsPlace = !isTurned(original) || !IN_A_ROW.contains(parent.normalName());
        if (keepsItsPlace && parent.childNodes().stream()
                .allMatch(node -> node == text || node instanceof TextNode other && other.isBlank())) {
            mark(parent);
        } else {
            String whole = text.getWholeText();
            int from = whole.length() - whole.stripLeading().length();
            markParts(text, List.of(new int[] {from, whole.stripTrailing().length()}));
        }
    }

    /** Marks what two or more words in a row have in common with the original, inside a sentence of the other language. */
    private void markRuns(TextNode text, Set<String> pairs) {
        String whole = text.getWholeText();
        List<MatchResult> words = words(whole);
        List<int[]> runs = new ArrayList<>();
        for (int at = 0; at + 1 < words.size(); at++) {
            int last = at;
            while (last + 1 < words.size() && pairs.contains(pair(whole, words.get(last), words.get(last + 1)))) {
                last++;
            }
            if (last > at && !own.contains(bare(whole)) && holdsWords(whole.substring(words.get(at).start(), words.get(last).end()))) {
                runs.add(new int[] {words.get(at).start(), words.get(last).end()});
                at = last;
            }
        }
        markParts(text, runs);
    }

    private void markParts(TextNode text, List<int[]> parts) {
        if (parts.isEmpty() || WHOLE_ONLY.contains(text.parent().normalName())) {
            return;
        }
        String whole = text.getWholeText();
        int from = 0;
        for (int[] part : parts) {
            text.before(new TextNode(whole.substring(from, part[0])));
            text.before(mark(new Element("span").appendChild(new TextNode(whole.substring(part[0], part[1])))));
            from = part[1];
        }
        text.before(new TextNode(whole.substring(from)));
        text.remove();
    }

    private Element mark(Element element) {
        return element.attr("lang", original);
    }

    private boolean isTurned(String other) {
        return !Frames.direction(other).equals(Frames.direction(language));
    }

    private static List<MatchResult> words(String text) {
        return ANY_WORD.matcher(text).results().toList();
    }

    private static Set<String> pairs(String text) {
        List<MatchResult> words = words(text);
        Set<String> pairs = new HashSet<>();
        for (int at = 0; at + 1 < words.size(); at++) {
            pairs.add(pair(text, words.get(at), words.get(at + 1)));
        }
        return pairs;
    }

    /** Two words with what stands between them. */
    private static String pair(String text, MatchResult one, MatchResult next) {
        return plain(text.substring(one.start(), next.end()));
    }

    private static List<TextNode> texts(Element body) {
        List<TextNode> texts = new ArrayList<>();
        NodeTraversor.traverse((node, depth) -> {
            if (node instanceof TextNode text && !text.isBlank() && text.parent() != null
                    && text.parent().closest(APART) == null) {
                texts.add(text);
            }
        }, (Node) body);
        return texts;
    }

    /** As it stands in the tables: without the number of an entry of a list, in small letters. */
    private static String bare(String text) {
        return ENTRY.matcher(plain(text)).replaceFirst("").toLowerCase(Locale.ROOT);
    }

    private static String plain(String text) {
        return BLANKS.matcher(text.strip()).replaceAll(" ");
    }
}

package org.benchleaf.browser;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.model.Rule;
import org.benchleaf.read.LibraryReader;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeTraversor;

/** What words, numbers, languages and directions must be marked with. */
final class TextRules {

    private static final int MOST_WORDS_OF_A_STEP = 25;
    private static final Pattern LINKS_SAYING_NOTHING = Pattern.compile(
            "(?i)(more|read more|here|click here|this|this page|link|details|see|open|download|next|previous|continue)");
    private static final Pattern UNIT_AFTER_A_PLAIN_SPACE = Pattern.compile(
            "\\d[ \u00a0](?:mL|L|µL|g|kg|mg|mol/L|mmol/L|°C|%|min|h|s|cm|mm|µm|nm|Pa|kPa|m³|m²)(?![\\p{L}\\p{N}])");
    private static final Pattern VESSEL =
            Pattern.compile("(\\d+(?:[.,]\\d+)?)[\\s\u00a0\u202f]?(mL|L)\\s(?:glass |plastic |polypropylene )?"
            + "(beaker|measuring cylinder|cylinder|jar|bottle|flask|tray|bowl|spray bottle)\\b");
    private static final Pattern HOLDS =
            Pattern.compile("\\bholds (?:up to |at most |about )?(\\d+(?:[.,]\\d+)?)[\\s\u00a0\u202f]?(mL|L)\\b");
    private static final Pattern VOLUME = Pattern.compile("(\\d+(?:[.,]\\d+)?)[\\s\u00a0\u202f]?(mL|L)\\b");
    /** Words that are frequent in a language and rare in the others; from memory. */
    private static final Map<String, Set<String>> FREQUENT = Map.of(
            "en", Set.of("the", "of", "and", "to", "in", "is", "was", "with", "for", "that", "it", "on", "are", "by", "from"),
            "de", Set.of("der", "die", "das", "und", "ist", "nicht", "mit", "ein", "eine", "auf", "von", "wird", "dem", "den"),
            "fr", Set.of("le", "la", "les", "des", "et", "est", "une", "dans", "pour", "avec", "sur", "du", "au", "qui"),
            "es", Set.of("el", "los", "las", "una", "con", "para", "por", "del", "que", "es", "y", "se", "su"),
            "it", Set.of("il", "gli", "della", "di", "che", "una", "per", "con", "del", "è", "sono", "nel"),
            "cy", Set.of("yn", "y", "yr", "ar", "ac", "ei", "mae", "wedi", "i", "o", "gan", "nid", "dan", "am", "fel", "neu"),
            "nl", Set.of("het", "een", "van", "niet", "met", "op", "zijn", "wordt", "voor", "aan", "bij"));

    private static final Pattern RULE_ID = ruleIds();

    private TextRules() {
    }

    static List<PageRule> all() {
        return List.of(
                new PageRule("links make sense alone", "2.4.4", page -> page.all("a[href]")
                        .filter(link -> LINKS_SAYING_NOTHING.matcher(name(link)).matches() || name(link).isBlank())
                        .map(Element::outerHtml)),
                new PageRule("one link text, one target", "2.4.4", TextRules::twinLinks),
                new PageRule("no id of a rule stands before readers", "house", TextRules::idsOfRules),
                new PageRule("foreign words carry their language", "3.1.2", TextRules::foreignWords),
                new PageRule("direction is marked", "3.1.2, house", TextRules::directions),
                new PageRule("steps are a list", "1.3.1", TextRules::typedSteps),
                new PageRule("steps are short", "house: at most 25 words", page -> page.all("[class*=instruction]")
                        .filter(step -> step.text().split("\\s+").length > MOST_WORDS_OF_A_STEP).map(WrittenPage::shown)),
                new PageRule("quantity fits its vessel", "house", TextRules::overflowingVessels),
                new PageRule("no text waits for a hover", "1.4.13", page -> page.all("[title]:not(iframe)")
                        .map(element -> element.tagName() + " title=\"" + element.attr("title") + "\"")),
                new PageRule("headings are marked as headings", "1.3.1", TextRules::boldLines),
                new PageRule("meaning is in words too", "1.4.1", TextRules::tonesWithoutWords),
                new PageRule("units stand by their numbers", "SI brochure 5.4.3", TextRules::looseUnits));
    }

    private static String name(Element link) {
        String label = link.attr("aria-label");
        return (label.isEmpty() ? link.text() + link.select("img").attr("alt") : label).strip();
    }

    /** A number in running text opens its own working on the same page; its sentence says which. */
    private static Stream<String> twinLinks(WrittenPage page) {
        Map<String, String> targets = new HashMap<>();
        return page.all("a[href]").filter(link -> !(link.hasClass("number") && link.attr("href").startsWith("#")))
                .filter(link -> {
                    String before = targets.putIfAbsent(name(link).toLowerCase(Locale.ROOT), link.attr("href"));
                    return before != null && !before.equals(link.attr("href"));
                }).map(link -> "\"" + name(link) + "\" leads to " + link.attr("href") + " and to "
                        + targets.get(name(link).toLowerCase(Locale.ROOT)));
    }

    /** An id is for authors: on the page of the rules, and on those of the format. */
    private static Stream<String> idsOfRules(WrittenPage page) {
        return page.path().matches("(?:.*/)?(?:rules|writing[\\w-]*)\\.html") ? Stream.of()
                : RULE_ID.matcher(page.html().body().text()).results().map(MatchResult::group).distinct();
    }

    /** The ids with a hyphen, which no word has, of the program's rules. */
    private static Pattern ruleIds() {
        String ids = LibraryChecker.check(LibraryReader.read(Path.of("content"))).library().rules().stream().map(Rule::id)
                .filter(id -> id.contains("-")).map(Pattern::quote)
                .collect(Collectors.joining("|"));
        return Pattern.compile("(?<![\\w/#-])(?:" + ids + ")(?![\\w-])");
    }

    private static Stream<String> foreignWords(WrittenPage page) {
        Stream.Builder<String> found = Stream.builder();
        NodeTraversor.traverse((node, depth) -> {
            if (node instanceof TextNode text && isProse(text.parent())) {
                Element holder = text.parent();
                String language = languageAt(holder);
                if (letters(text.text(), true) && !isRightToLeft(language)) {
                    found.add("right-to-left words marked as " + language + ": " + text.text().strip());
                }
            }
        }, page.html().body());
        page.all("p, li, td, dd, dt, h1, h2, h3, figcaption").filter(block -> block.select("p, li, dd").size() == 0
                || block.tagName().equals("p")).forEach(block -> {
                    String language = languageAt(block).replaceFirst("-.*", "");
                    String spoken = guess(ownProse(block));
                    if (!spoken.isEmpty() && !spoken.equals(language)) {
                        found.add("marked as " + language + ", reads as " + spoken + ": " + WrittenPage.shown(block));
                    }
                });
        return found.build();
    }

    private static boolean isProse(Element holder) {
        return holder.closest("script, style, svg, math, code") == null;
    }

    /** The text of a block without the parts that say what language they are in. */
    private static String ownProse(Element block) {
        Element copy = block.clone();
        copy.select("[lang], cite, code, math").remove();
        return copy.text();
    }

    private static String languageAt(Element element) {
        Element marked = element.closest("[lang]");
        return marked == null ? "" : marked.attr("lang");
    }

    private static String guess(String text) {
        List<String> words = Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")).filter(word -> !word.isEmpty()).toList();
        if (words.size() < 6) {
            return "";
        }
        String best = "";
        long most = Math.max(2, words.size() / 5);
        for (Map.Entry<String, Set<String>> language : FREQUENT.entrySet()) {
            long count = words.stream().filter(language.getValue()::contains).count();
            if (count > most) {
                most = count;
                best = language.getKey();
            }
        }
        return best;
    }

    private static boolean letters(String text, boolean rightToLeft) {
        return text.codePoints().filter(Character::isLetter).anyMatch(letter ->
                (Character.getDirectionality(letter) == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || Character.getDirectionality(letter) == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC) == rightToLeft);
    }

    private static boolean isRightToLeft(String language) {
        return language.matches("(ar|fa|he|ur|yi|ps|sd|dv|ckb)(-.*)?");
    }

    private static Stream<String> directions(WrittenPage page) {
        Stream.Builder<String> found = Stream.builder();
        page.all("[lang]").filter(element -> isRightToLeft(element.attr("lang"))
                && !(element.closest("[dir]") != null && element.closest("[dir]").attr("dir").equals("rtl")))
                .forEach(element -> found.add("right-to-left without dir: " + WrittenPage.shown(element)));
        Element root = page.html().selectFirst("html");
        String wanted = isRightToLeft(root.attr("lang")) ? "rtl" : "ltr";
        if (!root.attr("dir").equals(wanted)) {
            found.add("the page is " + root.attr("lang") + " and dir=\"" + root.attr("dir") + "\"");
        }
        page.all("[dir=rtl] *, [dir=rtl]").filter(element -> element.closest("bdi, script, svg, math") == null
                && VOLUME.matcher(element.ownText()).find()).forEach(element ->
                found.add("a quantity in right-to-left text is not set apart: " + WrittenPage.shown(element)));
        return found.build();
    }

    private static Stream<String> typedSteps(WrittenPage page) {
        Stream<String> typed = page.all("main p, main div, main li, main td, main h2, main h3")
                .filter(block -> block.ownText().strip().matches("(?s)(?:\\d{1,2}[.)]|(?i:step) \\d{1,2}[.:)]?) .*"))
                .filter(block -> !(block.is("h2, h3") && block.closest("ol > li") != null))
                // One screen at a time, beside the list of all steps on the same page.
                .filter(block -> !block.is(".screen__name"))
                .map(WrittenPage::shown);
        Stream<String> missing = page.kind().equals("step-sheet") && !page.has("main ol > li[id]")
                ? Stream.of("a step sheet without a list of steps") : Stream.of();
        return Stream.concat(typed, missing);
    }

    private static Stream<String> overflowingVessels(WrittenPage page) {
        return page.all("p, li, dd, tr, td").filter(block -> block.select("p, li, dd").size() <= 1).flatMap(block ->
                Stream.of(block.text().split("(?<=[.;])\\s")).flatMap(TextRules::tooMuch)).distinct();
    }

    private static Stream<String> tooMuch(String sentence) {
        double room = Double.NaN;
        for (Pattern vessels : List.of(VESSEL, HOLDS)) {
            Matcher vessel = vessels.matcher(sentence);
            if (vessel.find()) {
                room = litres(vessel.group(1), vessel.group(2));
            }
        }
        if (Double.isNaN(room)) {
            return Stream.of();
        }
        Matcher volume = VOLUME.matcher(sentence);
        while (volume.find()) {
            boolean sum = sentence.substring(volume.end()).matches("(?s) (in all|in total|altogether|all told).*")
                    || sentence.matches("(?s).*\\bfilled \\d+ times\\b.*");
            if (!sum && litres(volume.group(1), volume.group(2)) > room * 1.0001) {
                return Stream.of(volume.group() + " does not fit: " + sentence);
            }
        }
        return Stream.of();
    }

    private static double litres(String number, String unit) {
        return Double.parseDouble(number.replace(',', '.')) * (unit.equals("L") ? 1 : 0.001);
    }

    /** What the browser's own rule sees by weight is seen here by its marks, with scripts off as well. */
    private static Stream<String> boldLines(WrittenPage page) {
        return page.all("main p").filter(line -> line.childrenSize() == 1 && line.ownText().isBlank()
                && line.child(0).is("b, strong") && line.nextElementSibling() != null
                && !line.text().matches("(?s).*[.!?:;,…]") && line.closest("li, td, dd, summary, figure, [role=note]") == null)
                .map(WrittenPage::shown);
    }

    /** A block of a tone begins with the word of that tone. */
    private static Stream<String> tonesWithoutWords(WrittenPage page) {
        return page.all("[class~=--(danger|care|caution|warning|hold|stop|over|failed|missing)\\b]")
                .filter(block -> !block.is("strong, b")).filter(block -> !beginsWithItsWord(block)).filter(block -> {
                    Element first = block;
                    while (first.ownText().isBlank() && first.firstElementChild() != null) {
                        first = first.firstElementChild();
                    }
                    return !first.is("strong, b, [class*=word], [class*=level], [class*=label], [class*=name], h2, h3, h4, dt");
                }).map(WrittenPage::shown);
    }

    private static boolean beginsWithItsWord(Element block) {
        Element word = block.selectFirst("strong, b");
        return word != null && word.hasText() && block.text().startsWith(word.text());
    }

    private static Stream<String> looseUnits(WrittenPage page) {
        List<String> found = new ArrayList<>();
        NodeTraversor.traverse((node, depth) -> {
            if (node instanceof TextNode text && isProse(text.parent())
                    && UNIT_AFTER_A_PLAIN_SPACE.matcher(text.getWholeText()).find()) {
                found.add(WrittenPage.shown(text.parent()));
            }
        }, page.html().body());
        return found.isEmpty() ? Stream.of() : Stream.of(found.size() + " places, such as " + found.get(0));
    }
}

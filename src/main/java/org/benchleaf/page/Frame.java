package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * What surrounds the content of a page and is the same everywhere but for its links.
 *
 * @param siteName who publishes
 * @param headTitle title of the page, of its case and of the site, for the window
 * @param direction {@code ltr} or {@code rtl}
 * @param up the way to the site's root: empty or {@code ../}…
 * @param ways to the site's main pages
 * @param casePages the pages of the same case; empty on other pages
 * @param allWays every way, for the foot of the page
 * @param otherLanguages the same page in other languages
 * @param translated says of a page in another language than that of its original what its readers should know of its words
 * @param audience for whom the site is, if it is not for everybody
 * @param onScreenOnly what is not printed: {@code page} or {@code pictures}, for want of a permission; {@code workings}, as the author
 *     chose; {@code details}
 * @param notice the standing notice that nothing here replaces a conservator
 * @param demo says that everything is invented, if it is
 * @param retold says from which publication a case is told, and by whom; empty if it is told by those who did it
 * @param licence of text and data, in words, with the way to its text
 * @param words the frame's own words
 * @param web what the page says for programs that show a link to it; empty if the site has no address on the web
 * @param bringsFonts whether it is shown in letters that lie in the site
 */
public record Frame(String siteName, String headTitle, String direction, String up, List<Link> ways,
        List<Link> casePages, List<Link> allWays, List<LanguageLink> otherLanguages, Optional<String> translated,
        Optional<String> audience,
        List<String> onScreenOnly, String notice, Optional<String> demo, Optional<Retold> retold,
        Optional<RichText> licence, Map<String, String> words, Optional<OnTheWeb> web, boolean bringsFonts) {

    public Frame {
        ways = List.copyOf(ways);
        casePages = List.copyOf(casePages);
        allWays = List.copyOf(allWays);
        otherLanguages = List.copyOf(otherLanguages);
        onScreenOnly = List.copyOf(onScreenOnly);
        words = Map.copyOf(words);
    }

    /**
     * From which publication a case is told.
     *
     * @param by who tells it from there, in a sentence
     * @param source the publication, with the way to its entry
     * @param terms under which licence it stands and what was changed, in words
     */
    public record Retold(String by, Link source, String terms) {
    }

    /**
     * The same page in another language.
     *
     * @param name what the language calls itself
     * @param language BCP 47 tag
     * @param direction in which it is written
     */
    public record LanguageLink(String name, String language, String direction, String href) {
    }
}

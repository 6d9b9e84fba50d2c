package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.model.Studio;
import org.benchleaf.page.Link;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.TakeAlong;
import org.benchleaf.words.Words;

/** Lets the first page of a case, and the site's, say what can be taken away. */
public final class Offers {

    private static final String SECTION = "take-along";

    private Offers() {
    }

    /**
     * The pages of a case, of which the first offers each whole page and what is made of all of them.
     *
     * @param forms in which they can be taken away
     */
    public static List<Page> onCase(List<Page> pages, Set<Studio.TakeAlong> forms) {
        if (pages.isEmpty()) {
            return pages;
        }
        Words words = Words.in(pages.get(0).language());
        Stream<Link> whole = pages.stream().filter(page -> forms.contains(Studio.TakeAlong.ONE_FILE))
                .map(page -> Link.to(words.say("take-along.one-file", "page", page.title()), page.path()));
        Stream<Link> sheets = forms(forms, Studio.TakeAlong.PDF).flatMap(form -> pages.stream())
                .filter(page -> TakenName.isSheet(page.path()))
                .map(page -> Link.to(words.say("take-along.pdf", "page", page.title()), TakenName.sheetOf(page.path())));
        Stream<Link> bundles = forms(forms, Studio.TakeAlong.EPUB, Studio.TakeAlong.ZIP).map(form ->
                Link.to(words.say("take-along." + form.words()), form.words()));
        return offered(pages, words, Stream.of(whole, sheets, bundles).flatMap(all -> all).toList());
    }

    /** The pages of a site, of which the first offers what is made of all cases. */
    public static List<Page> onSite(List<Page> pages, Studio studio) {
        Words words = Words.in(pages.get(0).language());
        List<Link> bundles = forms(studio.takeAlong(), Studio.TakeAlong.EPUB, Studio.TakeAlong.ZIP).map(form ->
                Link.to(words.say("take-along.site-" + form.words()), form.words())).toList();
        return offered(Installation.isWanted(studio) ? told(pages) : pages, words, bundles);
    }

    private static List<Page> told(List<Page> pages) {
        List<Page> told = new ArrayList<>(pages);
        told.set(0, Installation.told(pages.get(0)));
        return told;
    }

    private static Stream<Studio.TakeAlong> forms(Set<Studio.TakeAlong> wanted, Studio.TakeAlong... forms) {
        return Stream.of(forms).filter(wanted::contains);
    }

    private static List<Page> offered(List<Page> pages, Words words, List<Link> files) {
        if (files.isEmpty()) {
            return pages;
        }
        List<Page> offered = new ArrayList<>(pages);
        offered.set(0, pages.get(0).with(new Section(SECTION, words.say("take-along.heading"),
                Optional.of(words.say("take-along.lead")), List.of(new TakeAlong(files, words.say("take-along.note"))))));
        return offered;
    }
}

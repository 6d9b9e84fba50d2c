package org.benchleaf.compose.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Retelling;
import org.benchleaf.model.SourceLicence;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Frame;
import org.benchleaf.page.Link;
import org.benchleaf.page.OnTheWeb;
import org.benchleaf.page.Paths;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Makes what surrounds a page: the ways, the notices, the title of the window. */
public final class Frames {

    private final Library library;
    private final Words words;
    private final Audience audience;
    private final List<SitePageName> ofSite;
    private LanguageFolder folder = LanguageFolder.NONE;

    public Frames(Library library, Words words, Audience audience, List<SitePageName> ofSite) {
        this.library = library;
        this.words = words;
        this.audience = audience;
        this.ofSite = ofSite;
    }

    /** Makes them frames of pages that lie in a folder of a language. */
    public Frames lyingIn(LanguageFolder other) {
        folder = other;
        return this;
    }

    /** The frame of a page of the whole site. */
    Frame ofSite(String path, String title) {
        String site = library.studio().name();
        String what = !title.equals(site) ? title : folder.language().isEmpty() ? "" : words.say("way.library");
        return frame(path, what.isEmpty() ? site : what + " - " + site, List.of(), Optional.empty(), siteLicence(), List.of(),
                Optional.empty());
    }

    /** Under which licence the pages of the whole site stand, where the studio says so. */
    private Optional<RichText> siteLicence() {
        return library.studio().licence().map(licence -> words.around("frame.licence-site", "licence", Licences.linked(licence)));
    }

    /**
     * The frame of a case's page.
     *
     * @param what the kind of page in words, such as "Step sheet"
     * @param onScreenOnly what of it may not be printed
     * @param picture beside a link to it
     */
    public Frame ofCase(String path, String what, TreatmentCase treatment, List<CasePageName> pages,
            List<String> onScreenOnly, Optional<LinkPicture> picture) {
        List<Link> casePages = pages.stream().map(page -> way(path,
                words.say("case-page." + page.kind()), Paths.inCase(treatment.id(), page.file()))).toList();
        return frame(path, what + " - " + treatment.title() + " - " + library.studio().name(), casePages,
                treatment.sources().retelling().map(retelling -> retold(path, retelling, treatment.publication())),
                Optional.of(words.around("frame.licence", "licence", Licences.linked(treatment.publication().licence()))), onScreenOnly,
                picture);
    }

    private Frame.Retold retold(String path, Retelling retelling, Publication publication) {
        String key = retelling.passage().source();
        Link source = Link.to(Sources.of(library).reference(key), Paths.way(path, Paths.SOURCES + "#" + Sources.anchor(key)));
        String licence = publication.sourceLicence().map(SourceLicence::words).orElse("");
        return new Frame.Retold(words.say("frame.retold", "by", retelling.by()), source,
                words.say(retelling.isWhole() ? "frame.retold-terms" : "frame.retold-terms-part",
                "licence", MissingValue.read(licence).map(words::missing).orElse(licence)));
    }

    private Frame frame(String path, String headTitle, List<Link> casePages, Optional<Frame.Retold> retold,
            Optional<RichText> licence, List<String> onScreenOnly, Optional<LinkPicture> picture) {
        return new Frame(library.studio().name(), headTitle, direction(words.language()), Paths.up(path),
                ways(path, true), casePages, ways(path, false), otherLanguages(path), unread(), audience.isPublic() ? Optional.empty()
                        : Optional.of(words.say("frame.trainees", "studio", library.studio().name())), onScreenOnly,
                words.say(retold.isEmpty() ? "frame.notice" : "frame.notice-retold"),
                library.studio().demo() ? Optional.of(words.say(retold.isEmpty() ? "frame.demo" : "frame.demo-retold"))
                        : Optional.empty(), retold, licence,
                words.group("frame"), onTheWeb(path, picture),
                library.studio().fonts() == Studio.Fonts.OF_THE_SITE);
    }

    private Optional<OnTheWeb> onTheWeb(String path, Optional<LinkPicture> picture) {
        return WebAddress.of(library.studio()).filter(any -> audience.isPublic()).map(web -> new OnTheWeb(web.to(path),
                picture.map(one -> web.to(one.path())), picture.map(LinkPicture::alt)));
    }

    private List<Link> ways(String path, boolean mainOnly) {
        return Stream.concat(ofSite.stream().filter(page -> page.inMenu() || !mainOnly)
                .map(page -> way(path, words.say("way." + page.kind()), page.path())),
                Stream.of(way(path, words.say("way.studio"), Paths.STUDIO))).toList();
    }

    private Link way(String from, String text, String to) {
        String there = folder.of(to);
        return new Link(text, Paths.way(from, there), from.equals(there));
    }

    private List<Frame.LanguageLink> otherLanguages(String path) {
        return folder.everywhere(path).entrySet().stream().filter(each -> !each.getValue().equals(path))
                .map(each -> new Frame.LanguageLink(Words.name(each.getKey()), each.getKey(), direction(each.getKey()),
                        Paths.way(path, each.getValue())))
                .toList();
    }

    /** What must be said of words that no native speaker has read, and of those that stand in the original's language. */
    private Optional<String> unread() {
        return folder.language().isEmpty() ? Optional.empty() : Optional.of(words.say(words.say("language.read").equals("yes")
                ? "frame.translated" : "frame.translated-unread"));
    }

    /** The direction in which a language is written. */
    public static String direction(String language) {
        return switch (Locale.forLanguageTag(language).getLanguage()) {
            case "ar", "fa", "he", "iw", "ur", "yi", "ps", "sd", "dv", "ckb" -> "rtl";
            default -> "ltr";
        };
    }
}

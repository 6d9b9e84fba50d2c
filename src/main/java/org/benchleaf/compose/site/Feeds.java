package org.benchleaf.compose.site;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.WebAddress;
import org.benchleaf.compose.part.XmlText;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Studio;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/**
 * Tells of new and changed case studies to those who read the news of many sites in one place: as an Atom feed (RFC 4287) and
 * as a JSON Feed 1.1. A case bears the day of its reference; one without a day is in no feed.
 */
public final class Feeds {

    /** As many as a reader may have missed between two looks (common practice, no source). */
    private static final int NEWEST = 50;
    private static final String ATOM = "http://www.w3.org/2005/Atom";
    private static final String JSON_FEED = "https://jsonfeed.org/version/1.1";
    private static final String BETWEEN = ",\n";

    private final WebAddress web;
    private final Studio studio;
    private final String language;
    private final List<CaseCard> newest;

    private Feeds(WebAddress web, Studio studio, String language, List<CaseCard> newest) {
        this.web = web;
        this.studio = studio;
        this.language = language;
        this.newest = newest;
    }

    /** The feeds of a site; empty if it has no address on the web, is not for everybody, or no case has a day. */
    public static Optional<Feeds> of(SiteDesk desk) {
        List<CaseCard> newest = desk.cards().stream().filter(card -> !card.lastChange().on().isEmpty())
                .sorted(Comparator.comparing((CaseCard card) -> card.lastChange().on()).reversed().thenComparing(CaseCard::id))
                .limit(NEWEST).toList();
        return newest.isEmpty() ? Optional.empty()
                : desk.web().map(web -> new Feeds(web, desk.library().studio(), desk.language(), newest));
    }

    public List<DataFile> files() {
        return List.of(new DataFile(Paths.ATOM, atom()), new DataFile(Paths.JSON_FEED, json()));
    }

    private String atom() {
        return XmlText.document("feed", ATOM, feed -> {
            feed.attribute("xml:lang", language).line().element("id", web.root()).line().element("title", studio.name())
                    .line().element("subtitle", studio.about()).line().element("updated", instant(newest.get(0)))
                    .line().element("author", author -> author.element("name", studio.name()))
                    .line().element("link", link -> link.attribute("rel", "self").attribute("href", web.to(Paths.ATOM)))
                    .line().element("link", link -> link.attribute("rel", "alternate").attribute("href", web.root()));
            newest.forEach(card -> feed.line().element("entry", entry -> entry(entry, card)));
        });
    }

    private void entry(XmlText entry, CaseCard card) {
        String address = web.to(card.path());
        entry.attribute("xml:lang", card.language()).element("id", address).element("title", card.title())
                .element("updated", instant(card)).element("summary", summary(card))
                .element("link", link -> link.attribute("rel", "alternate").attribute("href", address));
    }

    /** A day is written as its first moment in universal time, since both forms ask for a moment (RFC 3339). */
    private static String instant(CaseCard card) {
        return DateTimeFormatter.ISO_INSTANT.format(LocalDate.parse(card.lastChange().on()).atStartOfDay(ZoneOffset.UTC));
    }

    private static String summary(CaseCard card) {
        String changed = card.lastChange().what();
        return changed.isEmpty() ? card.summary()
                : Words.in(card.language()).say("feed.changed", "summary", card.summary(), "changed", changed);
    }

    private String json() {
        List<String> head = new ArrayList<>(List.of(member("version", JSON_FEED), member("title", studio.name()),
                member("home_page_url", web.root()), member("feed_url", web.to(Paths.JSON_FEED)),
                member("description", studio.about()), member("language", language),
                "\"authors\":" + JsonText.script(List.of(JsonText.object("name", studio.name())))));
        head.add("\"items\":[\n" + newest.stream().map(this::item).collect(Collectors.joining(BETWEEN)) + "\n]");
        return "{" + String.join(BETWEEN, head) + "}\n";
    }

    private static String member(String name, String value) {
        return JsonText.script(name) + ":" + JsonText.script(value);
    }

    private String item(CaseCard card) {
        String address = web.to(card.path());
        return JsonText.script(JsonText.object("id", address, "url", address, "title", card.title(),
                "content_text", summary(card), "date_modified", instant(card), "language", card.language()));
    }
}

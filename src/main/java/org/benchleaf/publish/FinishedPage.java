package org.benchleaf.publish;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A finished page read again, to be made into something that is taken away. */
final class FinishedPage {

    /** What offers files to be taken away, and keeps the site on a device: of what is taken away already, neither can be had. */
    static final String OFFERS = "#take-along, .kept-offline, script[src$='/offline.js'], script[src='assets/offline.js']";

    private static final Pattern OUTSIDE = Pattern.compile("(?i)(?:https?|mailto|tel):.*+");

    private final Document page;
    private final URI address;

    FinishedPage(SiteFile file) {
        this.page = Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8));
        this.address = URI.create(file.path());
        page.outputSettings().prettyPrint(false).charset(StandardCharsets.UTF_8);
    }

    Document document() {
        return page;
    }

    /** The path from the site's root of what an address of this page names. */
    String path(String address) {
        return this.address.resolve(address).getPath();
    }

    /**
     * Points each link to where its page has gone; one to a page that is not at hand becomes words.
     *
     * @param place from an address on this page, and the path with its anchor that it names, to the new address; empty if
     *         it is not at hand
     */
    void relink(BinaryOperator<String> place) {
        for (Element link : page.select("a[href]")) {
            String to = link.attr("href");
            if (OUTSIDE.matcher(to).matches()) {
                continue;
            }
            URI there = address.resolve(to);
            String found = place.apply(to, there.getPath() + (there.getFragment() == null ? "" : "#" + there.getFragment()));
            if (found.isEmpty()) {
                link.unwrap();
            } else {
                link.attr("href", found);
            }
        }
    }

    /**
     * The widest of a picture's files that is not too wide, or else its narrowest; nothing where none may stand inside.
     *
     * @param widest in pixels; 0 for none
     * @return its address as the page names it
     */
    static Optional<String> best(Element picture, int widest) {
        if (widest == 0) {
            return Optional.empty();
        }
        List<String[]> sizes = Stream.of(picture.attr("srcset").split(",\\s*")).filter(size -> !size.isBlank())
                .map(size -> size.strip().split("\\s+")).sorted(Comparator.comparingInt(FinishedPage::width)).toList();
        return Optional.of(sizes.isEmpty() ? picture.attr("src") : sizes.stream().filter(size -> width(size) <= widest)
                .reduce((narrower, wider) -> wider).orElse(sizes.get(0))[0]);
    }

    private static int width(String[] size) {
        return Integer.parseInt(size[1].replace("w", ""));
    }
}

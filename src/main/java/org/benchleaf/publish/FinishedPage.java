package org.benchleaf.publish;

import java.net.URI;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.compose.part.PageTree;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A finished page read again, to be made into something that is taken away. */
final class FinishedPage {

    /** What offers files to be taken away, and keeps the site on a device: of what is taken away already, neither can be had. */
    static final String OFFERS = "#take-along, .kept-offline, script[src$='/offline.js'], script[src='assets/offline.js']";

    /** Fonts lie in the site; what is taken away is shown in those of the device. */
    static final String FONTS = "link[rel=stylesheet][href$='assets/fonts.css']";

    private static final String OF_BROWSERS = "script, style, nav, .skip, .masthead__name, " + OFFERS
            + ", form[action], button, select, [hidden], .bench-desk";
    private static final Set<String> OF_SCREENS = Set.of("srcset", "sizes", "loading", "decoding", "fetchpriority", "tabindex");
    /** What a reader would type is written on a line. */
    private static final String LINE = "______";
    private static final String BOX = "\u2610 ";
    private static final int WIDEST = 960;
    private static final Pattern OUTSIDE = Pattern.compile("(?i)(?:https?|mailto|tel):.*+");

    private final Document page;
    private final URI address;

    FinishedPage(SiteFile file) {
        this(file.path(), PageTree.read(file.text()));
    }

    /**
     * A page that was read before.
     *
     * @param page which is changed
     */
    FinishedPage(String path, Document page) {
        this.page = page;
        this.address = URI.create(path);
    }

    Document document() {
        return page;
    }

    /**
     * Makes the page one that is read and written on, not used: without what only a browser or the site can do.
     *
     * @param atHand whether a picture can stand in it, by its path in the site
     * @return the paths of the pictures that stand in it; each image names its own as the page does
     */
    Set<String> toRead(Predicate<String> atHand) {
        page.select(OF_BROWSERS).remove();
        page.select("header:not(:has(*))").remove();
        page.select("input[type=checkbox], input[type=radio]").forEach(box -> box.before(BOX).remove());
        page.select("input, textarea").forEach(line -> line.before(LINE).remove());
        page.select("label").tagName("span").removeAttr("for");
        Set<String> shown = pictures(atHand);
        page.getAllElements().forEach(FinishedPage::attributes);
        return shown;
    }

    private Set<String> pictures(Predicate<String> atHand) {
        Set<String> shown = new TreeSet<>();
        for (Element picture : page.select("img")) {
            String best = best(picture, WIDEST).orElseThrow();
            if (atHand.test(path(best))) {
                picture.attr("src", best);
                shown.add(path(best));
            } else {
                picture.replaceWith(new Element("p").text(picture.attr("alt")));
            }
        }
        for (Element picture : page.select("image[href]")) {
            if (atHand.test(path(picture.attr("href")))) {
                shown.add(path(picture.attr("href")));
            } else {
                picture.remove();
            }
        }
        return shown;
    }

    private static void attributes(Element element) {
        List<String> gone = element.attributes().asList().stream().map(Attribute::getKey)
                .filter(key -> OF_SCREENS.contains(key) || key.startsWith("data-")).toList();
        gone.forEach(element::removeAttr);
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

package org.benchleaf.browser;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** What pictures must say in words. */
final class PictureRules {

    private static final int LONGEST_ALT = 150;
    private static final int SHORTEST_ALT = 4;

    private PictureRules() {
    }

    static List<PageRule> all() {
        return List.of(
                new PageRule("alt says what is seen", "1.1.1", PictureRules::weakAlts),
                new PageRule("no two pictures with one alt", "1.1.1", PictureRules::twinAlts),
                new PageRule("alt is not the caption", "1.1.1", PictureRules::repeatedCaptions),
                new PageRule("figures have captions", "1.3.1", page -> page.all("figure")
                        .filter(figure -> figure.select("> figcaption").stream().noneMatch(Element::hasText))
                        .map(WrittenPage::shown)),
                new PageRule("figures have no role", "house: three checkers reject it", page -> page.all("figure[role]")
                        .map(WrittenPage::shown)),
                new PageRule("pictures have their size", "house: nothing jumps", page -> page.all("img")
                        .filter(image -> !image.hasAttr("width") || !image.hasAttr("height")).map(Element::outerHtml)),
                new PageRule("pictograms are named with their code", "1.1.1, CLP Annex V", PictureRules::namelessPictograms));
    }

    private static Stream<String> weakAlts(WrittenPage page) {
        return page.all("img").filter(image -> {
            String alt = image.attr("alt").strip();
            String said = alt.toLowerCase(Locale.ROOT);
            return alt.length() < SHORTEST_ALT || alt.length() > LONGEST_ALT
                    || said.matches(".*\\.(jpe?g|png|webp|svg|tiff?)$") || said.matches("[a-z]*[-_]?\\d+")
                    || said.matches("(an? )?(image|picture|photo(graph)?|graphic|icon|drawing)( of)?\\b.{0,12}")
                    || said.startsWith("image of") || said.startsWith("picture of") || said.startsWith("photo of")
                    || said.equals(fileName(image));
        }).map(image -> "alt=\"" + image.attr("alt") + "\" of " + image.attr("src"));
    }

    private static String fileName(Element image) {
        String source = image.attr("src");
        return source.substring(source.lastIndexOf('/') + 1).replaceFirst("\\.[a-z]+$", "").toLowerCase(Locale.ROOT);
    }

    private static Stream<String> twinAlts(WrittenPage page) {
        List<Element> images = page.all("img").filter(image -> !isPictogram(image)).toList();
        return images.stream().filter(image -> images.stream().anyMatch(other ->
                other != image && other.attr("alt").equals(image.attr("alt")) && !other.attr("src").equals(image.attr("src"))))
                .map(image -> "alt=\"" + image.attr("alt") + "\" of " + image.attr("src"));
    }

    private static Stream<String> repeatedCaptions(WrittenPage page) {
        return page.all("figure:has(img)").filter(figure -> {
            Element caption = figure.selectFirst("figcaption");
            Element image = figure.selectFirst("img");
            return caption != null && !image.attr("alt").isBlank()
                    && plain(caption.text()).contains(plain(image.attr("alt")));
        }).map(WrittenPage::shown);
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    private static Stream<String> namelessPictograms(WrittenPage page) {
        Stream<String> images = page.all("img").filter(PictureRules::isPictogram)
                .filter(image -> !namesHazard(image.attr("alt"))).map(Element::outerHtml);
        Stream<String> drawings = page.all("svg[class*=pictogram], [class*=pictogram] svg")
                .filter(drawing -> !namesHazard(name(drawing))).map(WrittenPage::shown);
        return Stream.concat(images, drawings);
    }

    private static boolean isPictogram(Element image) {
        return image.attr("src").matches("(?i).*ghs0\\d.*") || image.closest("[class*=pictogram]") != null;
    }

    /** A word of Latin letters has four at least; Arabic leaves short vowels out and calls the flame by three. */
    private static boolean namesHazard(String name) {
        return name.matches("(?s).*\\bGHS0\\d\\b.*")
                && name.replaceAll("GHS0\\d", "").matches("(?s).*(?:\\p{L}{4}|\\p{IsArabic}{3}).*");
    }

    private static String name(Element drawing) {
        Element title = drawing.selectFirst("> title");
        return drawing.attr("aria-label") + (title == null ? "" : title.text());
    }
}

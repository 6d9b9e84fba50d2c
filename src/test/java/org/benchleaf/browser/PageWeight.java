package org.benchleaf.browser;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.jsoup.nodes.Element;

/**
 * What a page weighs on its way to a reader, text packed as servers pack it, in bytes.
 *
 * @param page which page
 * @param html the page itself, packed
 * @param css its style sheets, packed
 * @param js its scripts, packed
 * @param requests how many files it asks for, those further down included
 * @param largestPicture the heaviest picture file that it may show
 * @param phonePictures the pictures that a phone takes
 */
record PageWeight(WrittenPage page, long html, long css, long js, int requests, long largestPicture, long phonePictures) {

    // Budgets of the house in bytes, 1 kB = 1000 bytes.
    /** A step sheet of ten steps with ten drawings, which weigh 4 kB of it. */
    private static final long MOST_HTML = 34_000;
    /** The same in another language: letters beyond ASCII take two bytes each, and what is not translated is marked. */
    private static final long MOST_TRANSLATED_HTML = 42_000;
    /**
     * The sheets of six stations in one page, in letters of two bytes: each is longer than the 32 kB over which packing finds again
     * what stood before (RFC 1951, 2), so that it packs them as six different ones.
     */
    private static final long MOST_TRANSLATED_STATIONS = 46_000;
    private static final long MOST_CSS = 12_000;
    private static final long MOST_JS = 20_000;
    private static final long MOST_SEARCH_JS = 100_000;
    private static final long MOST_WITHOUT_PICTURES = 100_000;
    private static final int MOST_REQUESTS = 12;
    private static final long MOST_OF_A_PICTURE = 250_000;
    private static final long MOST_ON_A_PHONE = 900_000;
    /** A phone 412 px wide with 2.6 dots a pixel, as the page-speed tool takes it. */
    private static final int PHONE_DOTS = 1071;

    /** The weight of a page with everything that it asks for. */
    static PageWeight of(SiteUnderTest site, WrittenPage page) {
        Set<String> sheets = named(page, "link[rel=stylesheet]", "href");
        Set<String> scripts = named(page, "script[src]", "src");
        Set<String> pictures = page.find("img").stream().map(image -> phoneSource(page, image)).collect(Collectors.toSet());
        Set<String> every = page.find("img").stream().flatMap(image -> sources(page, image).stream().map(Source::path))
                .collect(Collectors.toSet());
        return new PageWeight(page, packed(site, page.path()), packed(site, sheets), packed(site, scripts),
                1 + sheets.size() + scripts.size() + pictures.size(),
                every.stream().mapToLong(site::size).max().orElse(0), pictures.stream().mapToLong(site::size).sum());
    }

    long withoutPictures() {
        return html + css + js;
    }

    /** Which budgets are broken; the number of requests counts where the whole page is loaded at once. */
    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        over(faults, "HTML", html, !page.has(".page--translated") ? MOST_HTML
                : page.has(".page--class-stations") ? MOST_TRANSLATED_STATIONS : MOST_TRANSLATED_HTML);
        over(faults, "CSS", css, MOST_CSS);
        over(faults, "JS", js, page.has("[data-search]") ? MOST_SEARCH_JS : MOST_JS);
        over(faults, "all without pictures", withoutPictures(), page.has("[data-search]")
                ? MOST_WITHOUT_PICTURES + MOST_SEARCH_JS - MOST_JS : MOST_WITHOUT_PICTURES);
        over(faults, "requests", requests, MOST_REQUESTS);
        over(faults, "largest picture", largestPicture, MOST_OF_A_PICTURE);
        over(faults, "phone page with pictures", withoutPictures() + phonePictures, MOST_ON_A_PHONE);
        return faults;
    }

    private void over(List<Fault> faults, String what, long is, long most) {
        if (is > most) {
            faults.add(new Fault("weight", page.path(), what + " " + is + ", at most " + most));
        }
    }

    /** One line of a table of weights. */
    String line() {
        return String.format(Locale.ROOT,
                "%-14s %-44s html %5.1f  css %4.1f  js %5.1f  all %5.1f kB  files %2d  picture %5.1f  phone %6.1f kB",
                page.kind(), page.path(), html / 1e3, css / 1e3, js / 1e3, withoutPictures() / 1e3, requests,
                largestPicture / 1e3, (withoutPictures() + phonePictures) / 1e3);
    }

    private record Source(String path, int width) {
    }

    private static List<Source> sources(WrittenPage page, Element image) {
        int width = Integer.parseInt("0" + image.attr("width").replaceAll("\\D", ""));
        List<Source> sources = new ArrayList<>(List.of(new Source(Addresses.resolved(page.path(), image.attr("src")), width)));
        Stream.of(image.attr("srcset").split(",")).map(String::strip).filter(part -> part.endsWith("w")).forEach(part -> {
            String[] words = part.split("\\s+");
            sources.add(new Source(Addresses.resolved(page.path(), words[0]), Integer.parseInt(words[1].replace("w", ""))));
        });
        return sources;
    }

    /** The narrowest file that fills a phone, or the widest there is. */
    private static String phoneSource(WrittenPage page, Element image) {
        List<Source> sources = sources(page, image).stream()
                .sorted((one, other) -> Integer.compare(one.width(), other.width())).toList();
        return sources.stream().filter(source -> source.width() >= PHONE_DOTS).findFirst()
                .orElse(sources.get(sources.size() - 1)).path();
    }

    private static Set<String> named(WrittenPage page, String selector, String attribute) {
        return page.find(selector).eachAttr(attribute).stream()
                .map(address -> Addresses.resolved(page.path(), address)).collect(Collectors.toSet());
    }

    private static long packed(SiteUnderTest site, Set<String> paths) {
        return paths.stream().mapToLong(path -> packed(site, path)).sum();
    }

    private static long packed(SiteUnderTest site, String path) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(site.bytes(path));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return out.size();
    }
}

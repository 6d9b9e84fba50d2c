package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** One page with its style, scripts and pictures inside; links to pages that are not at hand become words. */
final class WholePage {

    /** What leads only to other pages, or offers this file. */
    private static final String LEADS_AWAY = "nav.ways, nav.tabs, nav.languages, link[hreflang], nav.foot__ways, " + FinishedPage.OFFERS
            + ", " + FinishedPage.FONTS
            + ", form[action]";
    private static final String CASE_PICTURES = "/pictures/";

    private final FinishedPage finished;
    private final Document page;
    private final Map<String, SiteFile> drawnOn;
    private final int widest;
    private final List<String> scripts = new ArrayList<>();
    private boolean holdsPictures;

    /**
     * A page made whole.
     *
     * @param drawnOn files by their paths from the site's root
     * @param widest of the pictures inside, in pixels; 0 for none
     */
    WholePage(FinishedPage finished, Map<String, SiteFile> drawnOn, int widest) {
        this.finished = finished;
        this.page = finished.document();
        this.drawnOn = drawnOn;
        this.widest = widest;
        page.select(LEADS_AWAY).remove();
        List<String> styles = styles();
        scripts();
        pictures();
        finished.relink((to, path) -> to.startsWith("#") ? to : "");
        page.select("meta[http-equiv=Content-Security-Policy]").attr("content", policy(styles));
    }

    /** The page's text. */
    String text() {
        return page.outerHtml();
    }

    /** Whether a picture of the case stands in it. */
    boolean holdsPictures() {
        return holdsPictures;
    }

    private List<String> styles() {
        List<String> styles = new ArrayList<>();
        for (Element link : page.select("link[rel=stylesheet]")) {
            String text = text(link.attr("href"));
            styles.add(text);
            link.replaceWith(new Element("style").appendChild(new DataNode(text)));
        }
        page.select("link[rel=icon]").forEach(link -> file(link.attr("href")).ifPresent(icon ->
                link.attr("href", icon.pictureData())));
        return styles;
    }

    /** A script inside a page does not wait for the rest, so it stands at the end. */
    private void scripts() {
        for (Element script : page.select("script[src]")) {
            String text = text(script.attr("src"));
            scripts.add(text);
            script.remove();
            page.body().appendElement("script").appendChild(new DataNode(text));
        }
    }

    private void pictures() {
        for (Element picture : page.select("img")) {
            Optional<SiteFile> file = FinishedPage.best(picture, widest).flatMap(this::file);
            picture.removeAttr("srcset").removeAttr("sizes").removeAttr("loading");
            if (file.isPresent()) {
                picture.attr("src", inside(file.get()));
            } else {
                picture.replaceWith(new Element("p").addClass("photo__words").text(picture.attr("alt")));
            }
        }
        for (Element picture : page.select("image[href]")) {
            file(widest > 0 ? picture.attr("href") : "").ifPresentOrElse(
                    file -> picture.attr("href", inside(file)), picture::remove);
        }
    }

    private String inside(SiteFile picture) {
        holdsPictures |= picture.path().contains(CASE_PICTURES);
        return picture.pictureData();
    }

    /** Nothing from elsewhere, and of styles and scripts those that stand inside. */
    private String policy(List<String> styles) {
        return "default-src 'none'; style-src " + hashes(styles) + "; script-src "
                + (scripts.isEmpty() ? "'none'" : hashes(scripts)) + "; img-src data:; base-uri 'none'; form-action 'none'";
    }

    private static String hashes(List<String> texts) {
        return texts.stream().map(text -> "'sha256-" + hash(text) + "'").collect(Collectors.joining(" "));
    }

    private static String hash(String text) {
        try {
            return Base64.getEncoder().encodeToString(
                    MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    private String text(String href) {
        return new String(file(href).orElseThrow(() -> new IllegalStateException("the page names " + href)).bytes(),
                StandardCharsets.UTF_8);
    }

    private Optional<SiteFile> file(String href) {
        return href.isEmpty() ? Optional.empty() : Optional.ofNullable(drawnOn.get(finished.path(href)));
    }
}

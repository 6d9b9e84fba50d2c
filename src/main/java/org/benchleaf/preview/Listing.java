package org.benchleaf.preview;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/** The pages that the preview has besides those of the site: the list of what can be looked at, and that there is no page. */
final class Listing {

    private static final String LIST = "list.html";
    private static final String NONE = "none.html";

    private Listing() {
    }

    /** The list of sites and cases; their names are made of letters that need no escape in HTML. */
    static String of(PreviewedSite site) {
        return packed(LIST).replace("{sites}", site.sites().stream().map(name -> item(name + "/index.html", name))
                .collect(Collectors.joining())).replace("{cases}", site.cases().stream()
                        .map(id -> item(site.sites().get(0) + "/cases/" + id + "/index.html", id)).collect(Collectors.joining()));
    }

    private static String item(String address, String name) {
        return "<li><a href=\"" + address + "\">" + name + "</a></li>\n";
    }

    /**
     * What stands where there is no page; it turns into the page as soon as there is one.
     *
     * @param script the address of the script of the preview
     */
    static String none(String script) {
        return packed(NONE).replace("{script}", script);
    }

    /** A text file of the preview. */
    static String packed(String name) {
        try (InputStream file = Listing.class.getResourceAsStream("/preview/" + name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("a file of the program cannot be read", broken);
        }
    }
}

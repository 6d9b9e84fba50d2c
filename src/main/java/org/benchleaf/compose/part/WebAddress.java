package org.benchleaf.compose.part;

import java.util.Optional;
import org.benchleaf.model.Studio;

/**
 * Where the site stands on the web, for files that are read elsewhere and so need whole addresses.
 *
 * @param root with the slash at its end
 */
public record WebAddress(String root) {

    /** The address that the studio states; empty if it states none. */
    public static Optional<WebAddress> of(Studio studio) {
        return studio.web().map(web -> new WebAddress(web.endsWith("/") ? web : web + "/"));
    }

    /** The whole address of a file of the site. */
    public String to(String path) {
        return root + path;
    }

    /** Whether nothing of its host lies above the site. */
    public boolean isWholeHost() {
        return root.matches("https?://[^/]++/");
    }
}

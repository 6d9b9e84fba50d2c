package org.benchleaf.browser;

import java.net.URI;

/** Finds where a link on a page leads. */
final class Addresses {

    private Addresses() {
    }

    /** The path from the site's root that a relative address on a page means, without question and anchor. */
    static String resolved(String page, String address) {
        URI target = URI.create("site:/" + page).resolve(address.replace(" ", "%20"));
        return target.getPath().substring(1);
    }
}

package org.benchleaf.compose;

/** Addresses of licences, for programs that read the page. */
final class Licences {

    private static final String LIST = "https://spdx.org/licenses/";

    private Licences() {
    }

    /** The address of a licence by its identifier; the list gives every identifier a page of that name. */
    static String address(String spdx) {
        return LIST + spdx + ".html";
    }
}

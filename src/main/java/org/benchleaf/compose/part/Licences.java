package org.benchleaf.compose.part;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Addresses of licences, for programs that read the page. */
public final class Licences {

    private static final String LIST = "https://spdx.org/licenses/";

    private static final Pattern CREATIVE_COMMONS = Pattern.compile("CC-(BY(?:-NC)?(?:-ND|-SA)?)-(\\d\\.\\d)");

    private Licences() {
    }

    /** The address of a licence by its identifier; the list gives every identifier a page of that name. */
    public static String address(String spdx) {
        return LIST + spdx + ".html";
    }

    /** The address that IIIF asks for, that of Creative Commons with http (Presentation API 3.0, rights); empty for any other licence. */
    public static Optional<String> rights(String spdx) {
        Matcher licence = CREATIVE_COMMONS.matcher(spdx);
        return spdx.equals("CC0-1.0") ? Optional.of("http://creativecommons.org/publicdomain/zero/1.0/")
                : licence.matches() ? Optional.of("http://creativecommons.org/licenses/" + licence.group(1).toLowerCase(Locale.ROOT)
                        + "/" + licence.group(2) + "/") : Optional.empty();
    }
}

package org.benchleaf.compose.part;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.text.Inline;

/** Addresses of licences: for programs that read the page, and for its readers. */
public final class Licences {

    private static final String LIST = "https://spdx.org/licenses/";

    private static final Pattern CREATIVE_COMMONS = Pattern.compile("CC-(BY(?:-NC)?(?:-ND|-SA)?)-(\\d\\.\\d)");

    /** The letters of an identifier of the list; any other words name a licence of nobody's but their author's. */
    private static final Pattern LISTED = Pattern.compile("[A-Za-z0-9.+-]+");

    private Licences() {
    }

    /** The address of a licence by its identifier; the list gives every identifier a page of that name. */
    public static String address(String spdx) {
        return LIST + spdx + ".html";
    }

    /** A licence with the way to its text: the deed of Creative Commons, or its page in the list; bare words where it is no identifier. */
    public static Inline linked(String licence) {
        return rights(licence).map(address -> address.replaceFirst("^http:", "https:"))
                .or(() -> Optional.of(licence).filter(Licences::isListed).map(Licences::address))
                .<Inline>map(address -> Inline.Hyperlink.to(address, licence)).orElseGet(() -> new Inline.Text(licence));
    }

    private static boolean isListed(String licence) {
        return LISTED.matcher(licence).matches() && licence.indexOf('-') > 0 && !licence.startsWith("LicenseRef-");
    }

    /** The address that IIIF asks for, that of Creative Commons with http (Presentation API 3.0, rights); empty for any other licence. */
    public static Optional<String> rights(String spdx) {
        Matcher licence = CREATIVE_COMMONS.matcher(spdx);
        return spdx.equals("CC0-1.0") ? Optional.of("http://creativecommons.org/publicdomain/zero/1.0/")
                : licence.matches() ? Optional.of("http://creativecommons.org/licenses/" + licence.group(1).toLowerCase(Locale.ROOT)
                        + "/" + licence.group(2) + "/") : Optional.empty();
    }
}

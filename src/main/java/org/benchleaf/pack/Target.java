package org.benchleaf.pack;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Where an address on a page leads.
 *
 * @param kind what sort of place
 * @param path of the file inside the site, for {@link Kind#INSIDE}; the reason why not, for {@link Kind#REFUSED}
 * @param anchor the part after #, percent-decoded; empty if there is none
 */
record Target(Kind kind, String path, String anchor) {

    private static final Pattern SCHEME = Pattern.compile("^([a-zA-Z][a-zA-Z0-9+.-]*):.*", Pattern.DOTALL);

    /** Sorts of places. */
    enum Kind {
        /** A file of the site. */
        INSIDE,
        /** Another host, a mailbox, or data written into the address itself. */
        OUTSIDE,
        /** Something that another host would have to send for the page to be whole. */
        LOADED_FROM_OUTSIDE,
        /** An address that a folder cannot answer. */
        REFUSED
    }

    static Target of(String page, PageScan.Link link) {
        String address = link.value();
        var scheme = SCHEME.matcher(address);
        if (scheme.matches()) {
            return schemed(scheme.group(1).toLowerCase(Locale.ROOT), link.loads());
        }
        if (address.startsWith("//")) {
            return link.loads() ? new Target(Kind.LOADED_FROM_OUTSIDE, "", "") : refused("it names a host without saying how");
        }
        if (address.startsWith("/")) {
            return refused("it starts at the root of a host or disk");
        }
        if (address.indexOf('\\') >= 0) {
            return refused("it has a backslash");
        }
        return inside(page, address);
    }

    private static Target schemed(String scheme, boolean loads) {
        return switch (scheme) {
            case "http", "https" -> new Target(loads ? Kind.LOADED_FROM_OUTSIDE : Kind.OUTSIDE, "", "");
            case "mailto", "tel" -> new Target(Kind.OUTSIDE, "", "");
            case "data" -> loads ? new Target(Kind.OUTSIDE, "", "") : refused("a reader is not sent to a data address");
            default -> refused("it begins with '" + scheme + ":'");
        };
    }

    private static Target inside(String page, String address) {
        int hash = address.indexOf('#');
        String anchor = hash < 0 ? "" : decoded(address.substring(hash + 1));
        String file = hash < 0 ? address : address.substring(0, hash);
        int query = file.indexOf('?');
        file = query < 0 ? file : file.substring(0, query);
        if (file.isEmpty()) {
            return new Target(Kind.INSIDE, page, anchor);
        }
        if (file.endsWith("/") || file.equals(".") || file.equals("..") || file.endsWith("/.") || file.endsWith("/..")) {
            return refused("it names a folder");
        }
        Deque<String> way = new ArrayDeque<>();
        int folder = page.lastIndexOf('/');
        for (String part : (folder < 0 ? file : page.substring(0, folder + 1) + file).split("/", -1)) {
            if (part.equals("..")) {
                if (way.pollLast() == null) {
                    return refused("it leaves the site's folder");
                }
            } else if (!part.equals(".")) {
                way.addLast(part);
            }
        }
        return new Target(Kind.INSIDE, decoded(String.join("/", way)), anchor);
    }

    private static Target refused(String reason) {
        return new Target(Kind.REFUSED, reason, "");
    }

    private static String decoded(String part) {
        if (part.indexOf('%') < 0) {
            return part;
        }
        try {
            return URLDecoder.decode(part.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notAnEscape) {
            return part;
        }
    }
}

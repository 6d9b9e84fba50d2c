package org.benchleaf.pack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a page names and what it points at, found in one pass over its HTML without building a tree: an edition of ten
 * thousand cases has tens of thousands of pages, and a tree of each would cost more than making them.
 *
 * @param ids every id on the page
 * @param links every address on the page, in the order of the page
 */
record PageScan(Set<String> ids, List<Link> links) {

    private static final Set<String> RAW = Set.of("script", "style", "textarea", "title");
    /** What a link that is no place to go to stands for. */
    private static final Pattern LOADED = Pattern.compile("\\b(?:stylesheet|icon|manifest|preload|prefetch)\\b");
    /** Attributes that hold an address. */
    static final Set<String> ADDRESSES = Set.of("href", "src", "poster", "data", "action", "formaction",
            "xlink:href", "background", "cite");

    /**
     * One address.
     *
     * @param value as written, character references resolved
     * @param loads whether the page shows or runs what is there; false if the reader goes there
     * @param alternative whether it is one of several sizes of a picture, of which the browser loads one
     */
    record Link(String value, boolean loads, boolean alternative) {
    }

    static PageScan of(String html) {
        return new Reader(html).scan();
    }

    /** Walks over one page. */
    private static final class Reader {

        private final String html;
        private final Set<String> ids = new HashSet<>();
        private final List<Link> links = new ArrayList<>();
        private int at;

        Reader(String html) {
            this.html = html;
        }

        PageScan scan() {
            for (at = html.indexOf('<'); at >= 0 && at < html.length(); at = html.indexOf('<', at)) {
                if (html.startsWith("<!--", at)) {
                    skipPast("-->", at + 4);
                } else if (at + 1 < html.length() && isLetter(html.charAt(at + 1))) {
                    element();
                } else {
                    at++;
                }
                if (at < 0) {
                    break;
                }
            }
            return new PageScan(ids, links);
        }

        private void skipPast(String end, int from) {
            int found = html.indexOf(end, from);
            at = found < 0 ? html.length() : found + end.length();
        }

        private void element() {
            int start = ++at;
            while (at < html.length() && !isSpace(html.charAt(at)) && html.charAt(at) != '>' && html.charAt(at) != '/') {
                at++;
            }
            String name = html.substring(start, at).toLowerCase(Locale.ROOT);
            List<String[]> attributes = new ArrayList<>(4);
            while (at < html.length() && html.charAt(at) != '>') {
                attribute(attributes);
            }
            at++;
            note(name, attributes);
            if (RAW.contains(name)) {
                skipRaw(name);
            }
        }

        private void skipRaw(String name) {
            int end = at;
            do {
                end = html.indexOf("</", end);
                if (end < 0) {
                    at = html.length();
                    return;
                }
                end += 2;
            } while (!html.regionMatches(true, end, name, 0, name.length()));
            at = end;
        }

        private void attribute(List<String[]> attributes) {
            char c = html.charAt(at);
            if (isSpace(c) || c == '/') {
                at++;
                return;
            }
            int start = at++;
            while (at < html.length() && !isSpace(c = html.charAt(at)) && c != '=' && c != '>' && c != '/') {
                at++;
            }
            String name = html.substring(start, at).toLowerCase(Locale.ROOT);
            skipSpace();
            String value = "";
            if (at < html.length() && html.charAt(at) == '=') {
                at++;
                skipSpace();
                value = value();
            }
            attributes.add(new String[] {name, value});
        }

        private String value() {
            if (at >= html.length()) {
                return "";
            }
            char quote = html.charAt(at);
            int start = at;
            if (quote == '"' || quote == '\'') {
                int end = html.indexOf(quote, start + 1);
                at = end < 0 ? html.length() : end + 1;
                return resolved(html.substring(start + 1, end < 0 ? html.length() : end));
            }
            while (at < html.length() && !isSpace(html.charAt(at)) && html.charAt(at) != '>') {
                at++;
            }
            return resolved(html.substring(start, at));
        }

        private void skipSpace() {
            while (at < html.length() && isSpace(html.charAt(at))) {
                at++;
            }
        }

        private void note(String element, List<String[]> attributes) {
            for (String[] attribute : attributes) {
                if (attribute[0].equals("id")) {
                    ids.add(attribute[1]);
                } else if (ADDRESSES.contains(attribute[0])
                        && !(attribute[0].equals("data") && !element.equals("object"))) {
                    links.add(new Link(attribute[1].strip(), loads(element, attribute[0], attributes), false));
                } else if (attribute[0].equals("srcset") || attribute[0].equals("imagesrcset")) {
                    for (String candidate : attribute[1].split(",(?=\\s)")) {
                        links.add(new Link(candidate.strip().split("\\s+", 2)[0], true, true));
                    }
                }
            }
        }

        private static boolean loads(String element, String attribute, List<String[]> attributes) {
            if (attribute.equals("action") || attribute.equals("formaction") || attribute.equals("cite")) {
                return false;
            }
            if (element.equals("link")) {
                return attributes.stream().anyMatch(each -> each[0].equals("rel")
                        && LOADED.matcher(each[1].toLowerCase(Locale.ROOT)).find());
            }
            return !element.equals("a") && !element.equals("area");
        }

        private static String resolved(String value) {
            return value.indexOf('&') < 0 ? value : org.jsoup.parser.Parser.unescapeEntities(value, true);
        }

        private static boolean isSpace(char c) {
            return c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\f';
        }

        private static boolean isLetter(char c) {
            return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
        }
    }
}

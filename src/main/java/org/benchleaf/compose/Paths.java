package org.benchleaf.compose;

import java.text.Normalizer;
import java.util.Locale;

/** Where pages lie, and the way from one to another: always relative, so that the site opens from a folder. */
final class Paths {

    static final String LIBRARY = "index.html";
    static final String BROWSE = "browse/index.html";
    static final String EVIDENCE = "evidence/index.html";
    static final String SEARCH = "search.html";
    static final String GLOSSARY = "glossary.html";
    static final String SOURCES = "sources.html";
    static final String MATERIALS = "materials/index.html";
    static final String SUBSTANCES = "substances.html";
    static final String METHODS = "methods.html";
    static final String CHECKED = "checked.html";
    static final String RULES = "rules.html";
    static final String WRITING = "writing.html";
    static final String SUMS = "sums.html";
    static final String SUMS_DATA = "assets/sums-data.js";

    static final String SITE_REFERENCE = "CITATION.cff";
    /** The pictures of a case for viewers of other sites. */
    static final String MANIFEST = "manifest.json";
    /** The object and its treatment as linked data. */
    static final String LINKED_ART = "linked-art.json";
    /** The picture beside a link to a case; the names of all others end with a width. */
    static final String LINK_PICTURE = "pictures/link.jpg";
    static final String ATOM = "feed.xml";
    static final String JSON_FEED = "feed.json";
    static final String ROBOTS = "robots.txt";

    /** How the files for reference managers begin; they lie beside the case study. */
    static final String REFERENCE = "reference.";

    /** Longer names make paths that some systems cannot copy. */
    private static final int LONGEST_NAME = 48;

    /** How the names of all files of classes begin; they lie beside the pages of their case. */
    static final String OF_CLASS = "class-";

    private Paths() {
    }

    /** The path of a file of the search's index, from 1. */
    static String searchIndex(String language, int number) {
        return "assets/" + searchScript(language).replace(".js", number == 1 ? ".js" : "-" + number + ".js");
    }

    /** The name of the script with the first part of the index of the search, for pages in a folder of a language or, empty, in none. */
    static String searchScript(String language) {
        return "search-index" + (language.isEmpty() ? "" : "-" + language) + ".js";
    }

    /** The path of a part of the map of the site, from 1; 0 is the map, or what lists its parts. */
    static String siteMap(int part) {
        return part == 0 ? "sitemap.xml" : "sitemap-" + part + ".xml";
    }

    static String caseStudy(String caseId) {
        return inCase(caseId, "index.html");
    }

    static String stepSheet(String caseId) {
        return inCase(caseId, "steps.html");
    }

    static String preparation(String caseId) {
        return inCase(caseId, "preparation.html");
    }

    static String results(String caseId) {
        return inCase(caseId, "results.html");
    }

    static String inCase(String caseId, String file) {
        return "cases/" + caseId + "/" + file;
    }

    static String material(String id) {
        return "materials/" + fileName(id) + ".html";
    }

    static String evidence(String file) {
        return "evidence/" + file;
    }

    /** The page on which all cases are compared that tell of a measure. */
    static String evidenceOf(String measure) {
        return evidence(fileName(measure) + ".html");
    }

    /** The page on which materials of a kind are compared; no material's own file has two hyphens in a row. */
    static String compared(String kind) {
        return "materials/compared--" + fileName(kind) + ".html";
    }

    static String browse(String facet, String value) {
        return "browse/" + facet + "-" + fileName(value) + ".html";
    }

    /** The path of a further page of a long list; no slug has two hyphens in a row, so it is never another's. */
    static String numbered(String path, int number) {
        return number == 1 ? path : path.substring(0, path.length() - ".html".length()) + "--" + number + ".html";
    }

    /** The way up from a page to the site's root: empty, {@code ../} or {@code ../../}. */
    static String up(String path) {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count());
    }

    /**
     * The shortest relative way from one page to another place.
     *
     * @param to a path from the root, with a fragment if need be; a bare fragment stays on the page
     */
    static String way(String from, String to) {
        if (to.startsWith("#")) {
            return to;
        }
        int hash = to.indexOf('#');
        String path = hash < 0 ? to : to.substring(0, hash);
        String fragment = hash < 0 ? "" : to.substring(hash);
        if (path.equals(from) && !fragment.isEmpty()) {
            return fragment;
        }
        int shared = 0;
        for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
            if (!from.startsWith(path.substring(0, slash + 1))) {
                break;
            }
            shared = slash + 1;
        }
        return up(from.substring(shared)) + path.substring(shared) + fragment;
    }

    /**
     * The text in the letters a to z, digits and hyphens, fit for a file's name on every disk or for an anchor.
     *
     * <p>A letter without such a spelling is written by its number, so that words of any script stay apart.
     */
    static String slug(String text) {
        StringBuilder slug = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFD).toLowerCase(Locale.ROOT).codePoints().forEach(c -> {
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
                slug.append((char) c);
            } else if (Character.isLetter(c)) {
                slug.append(Integer.toHexString(c));
            } else if (Character.getType(c) != Character.NON_SPACING_MARK && !slug.isEmpty()
                    && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
            }
        });
        if (!slug.isEmpty() && slug.charAt(slug.length() - 1) == '-') {
            slug.setLength(slug.length() - 1);
        }
        return slug.isEmpty() ? "x" : slug.toString();
    }

    /** A slug short enough for the name of a file; what is cut off still tells names apart. */
    static String fileName(String text) {
        String slug = slug(text);
        return slug.length() <= LONGEST_NAME ? slug
                : slug.substring(0, LONGEST_NAME - 9) + '-' + String.format("%08x", slug.hashCode());
    }

    /** The anchor of a step on the step sheet. */
    static String step(String id) {
        return "step-" + slug(id);
    }

    /** The anchor of a figure's working on a page. */
    static String working(String figure) {
        return "working-" + figure.replace('.', '-');
    }
}

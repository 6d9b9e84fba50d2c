package org.benchleaf.page;

import java.text.Normalizer;
import java.util.Locale;

/** Where pages lie, and the way from one to another: always relative, so that the site opens from a folder. */
public final class Paths {

    public static final String LIBRARY = "index.html";
    /** Who publishes the site, and how to reach them. */
    public static final String STUDIO = LIBRARY + "#studio";
    public static final String BROWSE = "browse/index.html";
    public static final String EVIDENCE = "evidence/index.html";
    public static final String SEARCH = "search.html";
    /** What the owner of any sheet can do. */
    public static final String AT_HOME = "at-home.html";
    public static final String GLOSSARY = "glossary.html";
    public static final String SOURCES = "sources.html";
    public static final String MATERIALS = "materials/index.html";
    public static final String SUBSTANCES = "substances.html";
    public static final String METHODS = "methods.html";
    public static final String CHECKED = "checked.html";
    public static final String RULES = "rules.html";
    public static final String WRITING = "writing.html";
    public static final String SUMS = "sums.html";
    public static final String SUMS_DATA = "assets/sums-data.js";

    public static final String SITE_REFERENCE = "CITATION.cff";
    /** The pictures of a case for viewers of other sites. */
    public static final String MANIFEST = "manifest.json";
    /** The object and its treatment as linked data. */
    public static final String LINKED_ART = "linked-art.json";
    /** The picture beside a link to a case; the names of all others end with a width. */
    public static final String LINK_PICTURE = "pictures/link.jpg";
    public static final String ATOM = "feed.xml";
    public static final String JSON_FEED = "feed.json";
    public static final String ROBOTS = "robots.txt";

    /** How the files for reference managers begin; they lie beside the case study. */
    public static final String REFERENCE = "reference.";

    /** Longer names make paths that some systems cannot copy. */
    private static final int LONGEST_NAME = 48;

    /** How the names of all files of classes begin; they lie beside the pages of their case. */
    public static final String OF_CLASS = "class-";

    private Paths() {
    }

    /** The path of a file of the search's index, from 1. */
    public static String searchIndex(String language, int number) {
        return "assets/" + searchScript(language).replace(".js", number == 1 ? ".js" : "-" + number + ".js");
    }

    /** The name of the script with the first part of the index of the search, for pages in a folder of a language or, empty, in none. */
    public static String searchScript(String language) {
        return "search-index" + (language.isEmpty() ? "" : "-" + language) + ".js";
    }

    /** The path of a part of the map of the site, from 1; 0 is the map, or what lists its parts. */
    public static String siteMap(int part) {
        return part == 0 ? "sitemap.xml" : "sitemap-" + part + ".xml";
    }

    public static String caseStudy(String caseId) {
        return inCase(caseId, "index.html");
    }

    public static String stepSheet(String caseId) {
        return inCase(caseId, "steps.html");
    }

    public static String preparation(String caseId) {
        return inCase(caseId, "preparation.html");
    }

    public static String results(String caseId) {
        return inCase(caseId, "results.html");
    }

    public static String inCase(String caseId, String file) {
        return "cases/" + caseId + "/" + file;
    }

    public static String material(String id) {
        return "materials/" + fileName(id) + ".html";
    }

    public static String evidence(String file) {
        return "evidence/" + file;
    }

    /** The page on which all cases are compared that tell of a measure. */
    public static String evidenceOf(String measure) {
        return evidence(fileName(measure) + ".html");
    }

    /** The page on which materials of a kind are compared; no material's own file has two hyphens in a row. */
    public static String compared(String kind) {
        return "materials/compared--" + fileName(kind) + ".html";
    }

    public static String browse(String facet, String value) {
        return "browse/" + facet + "-" + fileName(value) + ".html";
    }

    /** The path of a further page of a long list; no slug has two hyphens in a row, so it is never another's. */
    public static String numbered(String path, int number) {
        return number == 1 ? path : path.substring(0, path.length() - ".html".length()) + "--" + number + ".html";
    }

    /** The way up from a page to the site's root: empty, {@code ../} or {@code ../../}. */
    public static String up(String path) {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count());
    }

    /**
     * The shortest relative way from one page to another place.
     *
     * @param to a path from the root, with a fragment if need be; a bare fragment stays on the page
     */
    public static String way(String from, String to) {
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
    public static String slug(String text) {
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
    public static String fileName(String text) {
        String slug = slug(text);
        return slug.length() <= LONGEST_NAME ? slug
                : slug.substring(0, LONGEST_NAME - 9) + '-' + String.format("%08x", slug.hashCode());
    }

    /** The anchor of a step on the step sheet. */
    public static String step(String id) {
        return "step-" + slug(id);
    }

    /** The anchor of a figure's working on a page. */
    public static String working(String figure) {
        return "working-" + figure.replace('.', '-');
    }
}

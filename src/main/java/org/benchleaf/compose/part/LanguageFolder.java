package org.benchleaf.compose.part;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.page.Paths;

/**
 * Where pages lie that are told in another language than the site's own: in a folder named after it, below which their paths are
 * the same.
 *
 * @param language BCP 47 tag; empty for the pages that lie in no such folder
 * @param pages paths, without that folder, of the pages that lie in it
 * @param languages every language in which these pages are told, that of the original first
 */
public record LanguageFolder(String language, Set<String> pages, List<String> languages) {

    /** Begins an address outside the site. */
    private static final Pattern OUTSIDE = Pattern.compile("^(?:[a-zA-Z][a-zA-Z0-9+.-]*+:|/)");

    /** No such folder. */
    public static final LanguageFolder NONE = new LanguageFolder("", Set.of(), List.of());

    public LanguageFolder {
        pages = Set.copyOf(pages);
        languages = List.copyOf(languages);
    }

    /** The path of a page or place in this language: below the folder if it lies there, else the same. */
    public String of(String to) {
        int hash = to.indexOf('#');
        return pages.contains(hash < 0 ? to : to.substring(0, hash)) ? in(language, to) : to;
    }

    /** The path of a page in each of the languages, itself included; none if there is one alone. */
    Map<String, String> everywhere(String path) {
        String plain = plain(path);
        Map<String, String> paths = new LinkedHashMap<>();
        if (languages.size() > 1) {
            languages.forEach(each -> paths.put(each, each.equals(languages.get(0)) ? plain : in(each, plain)));
        }
        return paths;
    }

    /** The path of the same page in the original. */
    public String plain(String path) {
        return language.isEmpty() || !path.startsWith(language + "/") ? path : path.substring(language.length() + 1);
    }

    /** What leads from a page of this folder to where a link leads from the same page in the original. */
    String rebased(String path, String href) {
        if (language.isEmpty() || href.startsWith("#") || OUTSIDE.matcher(href).lookingAt()) {
            return href;
        }
        try {
            URI there = new URI(plain(path)).resolve(new URI(href));
            return Paths.way(path, of(there.getRawPath() + (there.getRawFragment() == null ? "" : "#" + there.getRawFragment())));
        } catch (URISyntaxException noAddress) {
            return href;
        }
    }

    private static String in(String language, String path) {
        return language.isEmpty() ? path : language + "/" + path;
    }
}

package org.benchleaf.compose;

/**
 * How a file that holds a whole page is called: after the page, and by whether it holds pictures, which have a permission of
 * their own.
 */
public final class WholeName {

    private static final String PAGE = ".html";
    private static final String WORDS = "-whole.html";
    private static final String PICTURES = "-whole-with-pictures.html";

    private WholeName() {
    }

    /** The path of the whole file of a page. */
    public static String of(String page, boolean withPictures) {
        return cut(page, PAGE) + (withPictures ? PICTURES : WORDS);
    }

    /** Whether a file of this path holds pictures of a case. */
    static boolean holdsPictures(String path) {
        return path.endsWith(PICTURES);
    }

    /** The path of the page that is wholly in a file or whose sentences are; of another file, its own path. */
    static String page(String file) {
        String path = PageSearch.page(file);
        return path.endsWith(PICTURES) ? cut(path, PICTURES) + PAGE : path.endsWith(WORDS) ? cut(path, WORDS) + PAGE : path;
    }

    private static String cut(String path, String ending) {
        return path.substring(0, path.length() - ending.length());
    }
}

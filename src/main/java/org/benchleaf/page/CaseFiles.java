package org.benchleaf.page;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells of the path of a file in a site to which case it belongs; pages in other languages lie in a folder of their language. */
public final class CaseFiles {

    /** The folder of all cases in the site's own language. */
    public static final String FOLDER = "cases/";

    /** A language is named by its BCP 47 tag, of which the first part has two to eight letters. */
    private static final Pattern PATH = Pattern.compile("(?:[a-zA-Z]{2,8}(?:-[a-zA-Z0-9]{1,8}){0,4}+/)?cases/(?<case>[^/]++)/(?<file>.*+)");

    private CaseFiles() {
    }

    /** The case to which a file belongs; empty if it belongs to none. */
    public static Optional<String> caseOf(String path) {
        Matcher matcher = PATH.matcher(path);
        return matcher.matches() ? Optional.of(matcher.group("case")) : Optional.empty();
    }

    /** Whether a file belongs to a case. */
    public static boolean isOf(String caseId, String path) {
        return caseOf(path).filter(caseId::equals).isPresent();
    }

    /** The path of a file of a case inside the folder of the case, in whichever language; the whole path of another file. */
    public static String inFolder(String path) {
        Matcher matcher = PATH.matcher(path);
        return matcher.matches() ? matcher.group("file") : path;
    }
}

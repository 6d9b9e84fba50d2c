package org.benchleaf.pack;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TakenFile;

/**
 * The list by which a device keeps an edition: {@code kept-files.js}, a script that names each file with its hash in the form
 * of Subresource Integrity (W3C Recommendation, 2016).
 */
final class KeptList {

    /** Where it stands in the site. */
    static final String PATH = "kept-files.js";
    /** What reads it; a site without it keeps nothing. */
    private static final String WORKER = "sw.js";
    private static final String MANIFEST = "manifest.webmanifest";
    private static final String FORMS = "schema/";
    private static final Pattern SIZE = Pattern.compile("cases/[^/]++/pictures/(?:[^/-]++-)++([0-9]++)\\.[a-z]++");
    /** A device has room for pictures as wide as its own screen. */
    private static final int WIDEST = 960;

    private KeptList() {
    }

    /** Whether an edition of these files is one that devices keep. */
    static boolean isWanted(Map<String, String> files) {
        return files.containsKey(WORKER);
    }

    /**
     * The list of an edition.
     *
     * @param day of the edition; empty if not known
     * @param files SHA-256 in hexadecimal, by path
     */
    static SiteFile of(String day, SortedMap<String, String> files) {
        List<String> lines = new ArrayList<>();
        SortedMap<String, String> kept = new TreeMap<>(files);
        kept.keySet().removeIf(path -> !isKept(path));
        kept.forEach((path, hash) -> lines.add("\"" + path + "\":\"sha256-"
                + Base64.getEncoder().encodeToString(HexFormat.of().parseHex(hash)) + "\""));
        String list = String.join(",\n", lines);
        return SiteFile.text(PATH, "self.keptFiles={\"on\":\"" + day + "\",\"mark\":\"" + Hash.of((day + list).getBytes(
                StandardCharsets.UTF_8)) + "\",\"files\":{\n" + list + "\n}};\n");
    }

    private static boolean isKept(String path) {
        Matcher size = SIZE.matcher(path);
        return !path.equals(PATH) && !path.equals(WORKER) && !path.equals(MANIFEST) && !path.startsWith(FORMS)
                && !TakenFile.isOne(path) && !(size.matches() && Integer.parseInt(size.group(1)) > WIDEST);
    }
}

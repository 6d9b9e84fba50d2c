package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Studio;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** Makes the file that says how the whole site is cited: the Citation File Format, version 1.2.0. */
public final class SiteReference {

    private SiteReference() {
    }

    public static DataFile file(Studio studio, Words words) {
        List<String> lines = new ArrayList<>(List.of("cff-version: 1.2.0", "type: dataset",
                "message: " + quoted(words.say("cite.site-message")), "title: " + quoted(studio.name()),
                "abstract: " + quoted(studio.about()), "authors:", "  - name: " + quoted(studio.name())));
        studio.licence().ifPresent(licence -> lines.add("license: " + quoted(licence)));
        studio.web().ifPresent(web -> lines.add("url: " + quoted(web)));
        return new DataFile(Paths.SITE_REFERENCE, String.join("\n", lines) + "\n");
    }

    /** In YAML a text in double quotation marks is written as in JSON. */
    private static String quoted(String text) {
        return JsonText.script(text);
    }
}

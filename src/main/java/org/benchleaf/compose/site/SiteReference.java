package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Source;
import org.benchleaf.model.Studio;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/**
 * Makes the file that says how the whole site is cited: the Citation File Format, version 1.2.0. The publications from which its cases
 * are retold are its references.
 */
public final class SiteReference {

    private SiteReference() {
    }

    public static DataFile file(SiteDesk desk) {
        Studio studio = desk.library().studio();
        List<String> lines = new ArrayList<>(List.of("cff-version: 1.2.0", "type: dataset",
                "message: " + quoted(Words.in(desk.language()).say("cite.site-message")), "title: " + quoted(studio.name()),
                "abstract: " + quoted(studio.about()), "authors:", "  - name: " + quoted(studio.name())));
        studio.licence().ifPresent(licence -> lines.add("license: " + quoted(licence)));
        studio.web().ifPresent(web -> lines.add("url: " + quoted(web)));
        lines.addAll(references(desk));
        return new DataFile(Paths.SITE_REFERENCE, String.join("\n", lines) + "\n");
    }

    private static List<String> references(SiteDesk desk) {
        TreeMap<String, List<String>> retold = new TreeMap<>();
        desk.cards().stream().filter(card -> desk.library().sources().containsKey(card.retoldFrom())).forEach((CaseCard card) ->
                retold.computeIfAbsent(card.retoldFrom(), any -> new ArrayList<>()).add(card.title()));
        List<String> lines = new ArrayList<>();
        retold.forEach((key, titles) -> lines.addAll(reference(desk.library().sources().get(key), titles)));
        if (!lines.isEmpty()) {
            lines.add(0, "references:");
        }
        return lines;
    }

    private static List<String> reference(Source source, List<String> titles) {
        List<String> lines = new ArrayList<>(List.of("  - type: generic", "    title: " + quoted(source.title()), "    authors:",
                "      - name: " + quoted(source.author())));
        if (source.year().matches("\\d{4}")) {
            lines.add("    year: " + source.year());
        }
        source.address().ifPresent(address -> lines.add("    url: " + quoted(address)));
        String where = source.where().isBlank() ? "" : source.where() + ". ";
        lines.add("    notes: " + quoted(where + "Retold in: " + String.join("; ", titles)));
        return lines;
    }

    /** In YAML a text in double quotation marks is written as in JSON. */
    private static String quoted(String text) {
        return JsonText.script(text);
    }
}

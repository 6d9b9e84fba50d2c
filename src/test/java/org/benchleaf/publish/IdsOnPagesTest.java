package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.DemoSite;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/** An id is for the author who gave it: pages name steps, solutions and damages as readers know them. */
class IdsOnPagesTest {

    /** In "a/bath-1", "#bath-1" and "bath-1.csv" it is part of an address or of the name of a file. */
    private static final Pattern WORD = Pattern.compile("(?<![\\w/.#-])[a-z][\\w-]*(?![\\w-]|\\.\\w)");

    @Test
    void no_page_of_the_demo_shows_an_id_of_its_case() throws IOException {
        List<String> shown = new ArrayList<>();
        int[] pages = {0};
        for (Path folder : folders()) {
            Set<String> ids = ids(folder);
            assertThat(ids).as(folder.toString()).isNotEmpty();
            DemoSite.made().files().forEach(file -> {
                if (file.isPage() && file.path().contains("cases/" + folder.getFileName() + "/")) {
                    pages[0]++;
                    Document page = Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8));
                    page.select("script, style").remove();
                    page.getAllElements().forEach(element -> told(element.ownText(), ids).forEach(id ->
                            shown.add(file.path() + ": " + id + " in '" + element.ownText() + "'")));
                }
            });
        }
        assertThat(pages[0]).isGreaterThan(50);
        assertThat(shown.stream().limit(20)).isEmpty();
    }

    private static List<Path> folders() throws IOException {
        try (var folders = Files.list(Path.of("content/cases"))) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    /** The ids in a text: those that are no words of a language, and any that stand in brackets behind a name. */
    private static List<String> told(String text, Set<String> ids) {
        List<String> told = new ArrayList<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            boolean bracketed = word.start() > 0 && text.charAt(word.start() - 1) == '(' && text.startsWith(")", word.end());
            if (ids.contains(word.group()) && (bracketed || word.group().matches(".*[-\\d].*"))) {
                told.add(word.group());
            }
        }
        return told;
    }

    private static Set<String> ids(Path folder) throws IOException {
        Map<String, Object> written = new Yaml().load(Files.readString(folder.resolve("case.md")).split("(?m)^---\\R", 3)[1]);
        Set<String> ids = new HashSet<>();
        gather(written, ids);
        if (written.get("solutions") instanceof Map<?, ?> solutions) {
            solutions.keySet().forEach(id -> ids.add(id.toString()));
        }
        return ids;
    }

    private static void gather(Object node, Set<String> ids) {
        if (node instanceof Map<?, ?> group) {
            if (group.containsKey("id")) {
                ids.add(group.get("id").toString());
            }
            group.values().forEach(value -> gather(value, ids));
        } else if (node instanceof List<?> list) {
            list.forEach(value -> gather(value, ids));
        }
    }
}

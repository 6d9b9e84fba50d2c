package org.benchleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.message.Messages;
import org.benchleaf.publish.SiteFile;

/** Small editions, and ways to publish them. */
final class Editions {

    private Editions() {
    }

    static Map<String, List<SiteFile>> cases(String... names) {
        Map<String, List<SiteFile>> made = new LinkedHashMap<>();
        List<String> links = new ArrayList<>();
        for (String name : names) {
            String path = "cases/" + name + "/index.html";
            links.add(path);
            made.put(name, new ArrayList<>(List.of(SiteFile.text(path, page("../../index.html") + name + "'s text"))));
        }
        made.put("", new ArrayList<>(List.of(SiteFile.text("index.html", page(links.toArray(String[]::new))))));
        return made;
    }

    static String page(String... links) {
        StringBuilder page = new StringBuilder("<!doctype html><title>x</title><h1 id=\"head\">x</h1>");
        for (String link : links) {
            page.append("<a href=\"").append(link).append("\">x</a>");
        }
        return page.toString();
    }

    static Messages stage(SitePacker packer, Map<String, List<SiteFile>> edition) {
        Messages messages = new Messages();
        edition.forEach((name, files) -> messages.addAll(name.isEmpty() ? packer.stage(SiteGroup.PAGES, "", "", files)
                : packer.stage(name, "key of " + name, "note of " + name, files)));
        return messages;
    }

    static Edition publish(Path site, Map<String, List<SiteFile>> edition) {
        return publish(site, edition, Integer.MAX_VALUE);
    }

    static Edition publish(Path site, Map<String, List<SiteFile>> edition, int cutAfter) {
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(stage(packer, edition).all()).isEmpty();
            assertThat(packer.verify(Set.of()).all()).isEmpty();
            packer.settle(LocalDate.of(2026, 6, 1));
            return packer.apply(count -> {
                if (count >= cutAfter) {
                    throw new CutOff();
                }
            });
        }
    }

    /** Stands for the end of the program at that moment. */
    static final class CutOff extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    static Map<String, String> contents(Path site) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (var all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                contents.put(site.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return contents;
    }
}

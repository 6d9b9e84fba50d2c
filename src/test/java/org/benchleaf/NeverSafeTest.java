package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.Catalogue;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.Test;

/** The program states the usual cautions and leaves the judgement to others: it calls nothing safe. */
class NeverSafeTest {

    private static final Pattern PROMISE = Pattern.compile(
            "(?i)(?<![\\p{L}-])(safe|safely|unsafe|harmless|harmlessly|non-toxic|nontoxic|risk-free|foolproof)(?![\\p{L}-])");
    private static final Pattern QUOTED = Pattern.compile(
            "(?<=[ (])(?:\"[^\"\\n]{1,40}\"|&quot;.{1,40}?&quot;|“[^”\\n]{1,40}”)(?=[ .,;)])");

    @Test
    void no_word_of_the_interface_of_its_tables_or_of_its_templates_calls_anything_safe() throws IOException {
        List<String> found = new ArrayList<>();
        for (String folder : List.of("src/main/resources/words", "src/main/resources/reference", "src/main/resources/schema",
                "templates")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                files.filter(Files::isRegularFile).filter(file -> !file.endsWith("claims.yaml"))
                        .filter(file -> file.toString().matches(".*\\.(properties|yaml|json|csv|txt|ftl)"))
                        .forEach(file -> found.addAll(promises(file.toString(), text(file))));
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void no_message_to_an_author_calls_anything_safe() {
        assertThat(Catalogue.all().stream().flatMap(message -> promises(message.code(),
                message.what() + " " + message.why() + " " + message.fix()).stream())).isEmpty();
    }

    @Test
    void no_file_of_the_demo_calls_anything_safe() {
        List<String> found = new ArrayList<>();
        for (SiteFile file : DemoSite.made().files()) {
            if (file.path().matches(".*\\.(html|json|csv)|.*search-index\\.js")) {
                found.addAll(promises(file.path(), new String(file.bytes(), StandardCharsets.UTF_8)));
            }
        }
        assertThat(found).isEmpty();
    }

    /** A word in quotation marks is talked about, not said. */
    private static List<String> promises(String where, String text) {
        List<String> found = new ArrayList<>();
        Matcher promise = PROMISE.matcher(where.endsWith(".json") ? text : QUOTED.matcher(text).replaceAll("“”"));
        while (promise.find()) {
            found.add(where + ": " + promise.group());
        }
        return found;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}

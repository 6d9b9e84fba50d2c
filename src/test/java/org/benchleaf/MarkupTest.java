package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;

/**
 * HTML is written by {@code publish} alone: no other class holds a text with a tag, an attribute with its value, or an escaped
 * letter. Read from the constants of the compiled classes, in which a text that is put together stands with its parts.
 */
class MarkupTest {

    private static final Path CLASSES = Path.of("target/classes/org/benchleaf");
    private static final int TEXT = 8;

    /** A tag, begun or ended; an attribute before its value; a letter by its name or number. */
    private static final Pattern MARKUP = Pattern.compile(
            "(?<!\\?)</?[A-Za-z][A-Za-z0-9-]*+(?:[ >/]|$)|(?:^| )[a-z-]{2,}=\"|&(?:[a-z]{2,8}|#\\d{1,5});");

    private static final String PUBLISH = "publish/";

    /** The classes outside {@code publish} that may, and why; one that no longer does is taken out of here. */
    private static final Map<String, String> MAY = Map.of(
            "command/OriginalWords", "the end of a comment in Markdown, as its text",
            "model/LibraryTexts", "finds the words in the formulas of a table, which are MathML",
            "preview/Listing", "the preview's own list of sites and cases, which stands on no page of a site",
            "read/LinkAddress", "a letter by its name that hides a scheme",
            "read/YamlSlip", "words of the YAML parser");

    @Test
    void only_publish_holds_markup() {
        Map<String, List<String>> found = found();
        assertThat(found.keySet()).as("classes of publish that write HTML").anyMatch(name -> name.equals("publish/HtmlWriter"));
        assertThat(found.entrySet()).filteredOn(each -> !each.getKey().startsWith(PUBLISH) && !MAY.containsKey(each.getKey())).isEmpty();
        assertThat(found.keySet()).as("exceptions that are still needed").containsAll(MAY.keySet());
    }

    private static Map<String, List<String>> found() {
        Map<String, List<String>> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            files.filter(file -> file.toString().endsWith(".class")).forEach(file -> {
                String name = CLASSES.relativize(file).toString().replace('\\', '/').replaceAll("(?:\\$.*)?\\.class$", "");
                List<String> texts = texts(file).filter(text -> MARKUP.matcher(text).find()).toList();
                if (!texts.isEmpty()) {
                    found.merge(name, texts, (one, more) -> Stream.concat(one.stream(), more.stream()).toList());
                }
            });
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return found;
    }

    private static Stream<String> texts(Path file) {
        try {
            ClassReader reader = new ClassReader(Files.readAllBytes(file));
            char[] room = new char[reader.getMaxStringLength()];
            return IntStream.range(1, reader.getItemCount()).filter(item -> reader.getItem(item) > 0
                    && reader.readByte(reader.getItem(item) - 1) == TEXT).mapToObj(item -> (String) reader.readConst(item, room))
                    .toList().stream();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}

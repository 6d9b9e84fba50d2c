package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.BlockExamples;
import org.benchleaf.page.Block;
import org.benchleaf.page.Note;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.text.RichText;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks the kinds of block: each has a template, a style and an example, and stands on a page as sound HTML. */
class BlocksTest {

    private static final Path TEMPLATES = Path.of("templates");
    private static final SitePublisher PUBLISHER = SitePublisher.with(TEMPLATES,
            (caseId, pictureId) -> List.of(new Rendition("cases/" + caseId + "/pictures/" + pictureId + "-480.jpg", 480, 660),
                    new Rendition("cases/" + caseId + "/pictures/" + pictureId + "-960.jpg", 960, 1320)));

    static List<Class<?>> kinds() {
        return BlockExamples.kinds();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void each_kind_of_block_has_an_example_of_its_own_kind(Class<?> kind) throws Exception {
        assertThat(BlockExamples.of(kind)).isInstanceOf(kind);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void each_kind_of_block_has_a_template_that_lists_its_data_and_a_style(Class<?> kind) throws Exception {
        Block example = BlockExamples.of(kind);
        String template = Files.readString(TEMPLATES.resolve("blocks/" + example.name() + ".ftl"));
        assertThat(template).startsWith("<#-- ");
        String head = template.substring(0, template.indexOf("-->"));
        assertThat(Stream.of(kind.getRecordComponents()).map(component -> component.getName()))
                .allSatisfy(name -> assertThat(head).containsPattern("\\b" + name + "\\b"));
        assertThat(TEMPLATES.resolve("style/" + example.name() + ".css")).isRegularFile();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void each_kind_of_block_is_sound_html_on_a_page(Class<?> kind) throws Exception {
        SiteFile file = PUBLISHER.publish(BlockExamples.page("example/page.html", kind == Opening.class
                ? List.of(BlockExamples.of(kind)) : List.of(BlockExamples.of(Opening.class), inSection(kind))));
        assertThat(HtmlChecker.findings(file.path(), file.bytes())).isEmpty();
    }

    private static Block inSection(Class<?> kind) throws Exception {
        return new Section("here", "Here", Optional.empty(), List.of(BlockExamples.of(kind)));
    }

    @Test
    void every_template_belongs_to_a_kind_of_block() throws Exception {
        List<String> names = kinds().stream().map(kind -> {
            try {
                return BlockExamples.of(kind).name();
            } catch (ReflectiveOperationException broken) {
                throw new IllegalStateException(broken);
            }
        }).toList();
        try (Stream<Path> files = Files.list(TEMPLATES.resolve("blocks"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".ftl", "")).toList())
                    .containsExactlyInAnyOrderElementsOf(names);
        }
    }

    @Test
    void no_template_switches_escaping_off_or_styles_an_element_itself() throws Exception {
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".ftl")).toList()) {
                assertThat(Files.readString(file)).as(file.toString())
                        .doesNotContain("no_esc", "noautoesc", "noparse", " style=", " onclick=", "<style");
            }
        }
    }

    @Test
    void text_that_looks_like_html_is_shown_as_text() throws Exception {
        Page page = BlockExamples.page("page.html", List.of(new Note("plain", "<b>Care</b>",
                RichText.of("<script>x</script> & \"y\""))));
        String html = new String(PUBLISHER.publish(page).bytes(), StandardCharsets.UTF_8);
        assertThat(html).contains("&lt;b&gt;Care&lt;/b&gt;", "&lt;script&gt;x&lt;/script&gt; &amp; \"y\"")
                .doesNotContain("<script>x", "<b>Care");
        assertThat(Jsoup.parse(html).selectFirst(".note p").text()).isEqualTo("<b>Care</b> <script>x</script> & \"y\"");
    }
}

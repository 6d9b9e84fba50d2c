package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.compose.BlockExamples;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a template's own value stands decides whether its unit is set to its number (SI brochure, 5.4.3); {@code ~} is that space. */
class PageFormatTest {

    @TempDir
    private Path templates;

    @ParameterizedTest
    @CsvSource({
        "${v}, 5~mL",
        "<p>${v}</p>, <p>5~mL</p>",
        "<p>about ${v} & <b>${v}</b></p>, <p>about 5~mL & <b>5~mL</b></p>",
        "<p title=\"${v}\">${v}</p>, <p title=\"5 mL\">5~mL</p>",
        "<p title=\"of ${v} and ${v}\"></p>, <p title=\"of 5 mL and 5 mL\"></p>",
        "<code>${v}</code> ${v}, <code>5 mL</code> 5~mL",
        "<pre class=\"a\">${v}</pre>, <pre class=\"a\">5 mL</pre>",
        "<textarea>${v}</textarea>, <textarea>5 mL</textarea>",
        "<script>${v}</script>, <script>5 mL</script>",
        "<codes>${v}</codes>, <codes>5~mL</codes>",
        "<#local x>${v}</#local><p title=\"${x}\"></p>, <p title=\"5 mL\"></p>",
        "<#local x><b>${v}</b></#local>${x}, <b>5 mL</b>",
        "${'<b>'} ${v}, &lt;b&gt; 5~mL",
    })
    void a_unit_is_set_to_its_number_in_running_text_alone(String template, String made) throws IOException {
        Files.writeString(templates.resolve("page.ftl"), "<#macro shown v>" + template + "</#macro><@shown v=\"5 mL\" />");
        String html = new String(SitePublisher.with(templates, (caseId, picture) -> List.of())
                .publish(BlockExamples.page("page.html", List.of())).bytes(), StandardCharsets.UTF_8);
        assertThat(html.strip().replace('\u202f', '~')).isEqualTo(made);
    }
}

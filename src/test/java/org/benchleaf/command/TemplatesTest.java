package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Templates of others: what they may do, where their slips are told, and which of them are used at all. */
class TemplatesTest {

    @TempDir
    private Path folder;
    private Path content;
    private Path look;

    @BeforeEach
    void copy_the_content_and_the_templates() throws IOException {
        content = folder.resolve("studio/content");
        look = folder.resolve("look");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        ChangedContent.copy(Path.of("templates"), look);
    }

    @ParameterizedTest
    @ValueSource(strings = {"${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"/\")}",
        "${page?api.getClass().getName()}", "${page.getClass().getName()}", "${page.class.name}",
        "${page.path()?api.getBytes()}", "${statics[\"java.lang.System\"].getenv()}",
        "<#assign f=page.path().getClass().forName(\"java.io.File\")>", "<#include \"../../studio/content/studio.yaml\">",
        "<#include \"file:///etc/hostname\">", "<#import \"/../secret.ftl\" as s>"})
    void a_template_reaches_nothing_but_the_page(String code) throws IOException {
        Files.writeString(folder.resolve("secret.ftl"), "<#assign word=\"secret\">");
        append("page.ftl", code);
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("SITE-040").contains("look/page.ftl");
        assertThat(folder.resolve("site/index.html")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"'${page.nothing}', 3", "'<#if>', 5", "'${1 + }', 7",
            "'<#list 1.. as n>so many letters that these are the first to be too many</#list>', 0"})
    void a_slip_is_told_with_its_place_and_the_page_that_was_made(String slip, int column) throws IOException {
        int line = (int) Files.readString(look.resolve("page.ftl")).lines().count() + 1;
        append("page.ftl", slip);
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains(column == 0 ? "look/page.ftl: error SITE-040" : "look/page.ftl:" + line + ":")
                .contains("error SITE-040", ".html'");
        assertThat(said.err().lines().filter(each -> each.contains("SITE-040"))).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<#list 1.. as x></#list>", "<#list 1.. as x><#if x lt 0>x</#if></#list>",
        "<#list 1..9999 as x><#list 1..9999 as y></#list></#list>"})
    void a_loop_that_writes_nothing_and_does_not_end_is_a_slip(String loop) throws IOException {
        int line = (int) Files.readString(look.resolve("page.ftl")).lines().count() + 1;
        append("page.ftl", loop);
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("look/page.ftl:" + line + ":", "error SITE-040", "does not end");
    }

    @Test
    void a_macro_that_calls_itself_without_end_is_a_slip() throws IOException {
        append("page.ftl", "<#macro again><@again/></#macro><@again/>");
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("SITE-040");
    }

    @Test
    void a_template_that_links_out_of_its_folder_is_not_read() throws IOException {
        Files.writeString(folder.resolve("outside.css"), "body { }");
        Files.createSymbolicLink(look.resolve("style/zz.css"), folder.resolve("outside.css"));
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("look/style/zz.css: error SITE-041");
    }

    @Test
    void a_script_that_is_taken_away_with_a_case_has_no_part_of_a_name_in_it() throws IOException {
        Files.writeString(content.resolve("studio.yaml"), "take along: [one file, zip]\n", StandardOpenOption.APPEND);
        Path script = look.resolve("script/disclosure.js");
        String before = Files.readString(script);
        Files.writeString(script, before + "window.asked = \"Mrs Brandreth-Voss\";\n");
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("LEAK-001");
        Files.writeString(script, before);
        assertThat(publish("--templates", look.toString()).code()).isZero();
    }

    @Test
    void a_missing_style_is_told_by_its_name() throws IOException {
        Files.delete(look.resolve("style/base.css"));
        Said said = publish("--templates", look.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("look/style/base.css: error SITE-041");
    }

    @Test
    void templates_beside_the_content_are_used_and_the_summary_names_them() throws IOException {
        ChangedContent.copy(look, folder.resolve("studio/templates"));
        Path css = folder.resolve("studio/templates/style/base.css");
        Files.writeString(css, Files.readString(css) + "\n.mark-of-the-studio { color: red; }\n");
        Said said = publish();
        assertThat(said.code()).as(said.err()).isZero();
        assertThat(said.out()).contains("templates " + folder.resolve("studio/templates").toString().replace('\\', '/'));
        assertThat(folder.resolve("site/assets/site.css")).content().contains("mark-of-the-studio");
    }

    @Test
    void templates_elsewhere_are_not_used_unless_they_are_named() {
        // The folder templates of this project lies where the test runs, not beside the content.
        Said said = publish();
        assertThat(said.code()).as(said.err()).isZero();
        assertThat(said.out()).contains("templates the program's own");
    }

    private void append(String template, String code) throws IOException {
        Path file = look.resolve(template);
        Files.writeString(file, Files.readString(file).stripTrailing() + "\n" + code + "\n");
    }

    private record Said(int code, String out, String err) {
    }

    private Said publish(String... more) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = new CommandLine(new PublishCommand()).setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        String[] words = new String[6 + more.length];
        String[] first = {"--content", content.toString(), "--site", folder.resolve("site").toString(), "--on", "2026-06-01"};
        System.arraycopy(first, 0, words, 0, first.length);
        System.arraycopy(more, 0, words, first.length, more.length);
        return new Said(line.execute(words), out.toString(), err.toString());
    }
}

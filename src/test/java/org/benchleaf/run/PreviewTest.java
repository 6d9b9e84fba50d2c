package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.ConnectException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.benchleaf.ChangedContent;
import org.benchleaf.command.PreviewClient;
import org.benchleaf.command.PreviewCommand;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/**
 * The preview, asked as a browser asks it. Answers to requests: RFC 9110; what a page is told: server-sent events (HTML Living
 * Standard, section 9.2).
 */
class PreviewTest {

    private static final String STUDY = "site/cases/tide/index.html";
    private static final String SHEET = "site/cases/tide/steps.html";

    @TempDir
    private Path folder;
    private ServedContent served;

    @BeforeEach
    void start() throws IOException {
        served = ServedContent.in(folder);
    }

    @AfterEach
    void stop() throws IOException {
        served.close();
    }

    @Test
    void an_open_page_is_told_when_its_case_has_changed() throws IOException {
        String before = served.client().get(STUDY).text();
        PreviewClient.Events events = served.events(STUDY, ServedContent.version(before));
        assertThat(events.strip()).isNotNull();
        change("cases/tide/case.md", text -> text.replace("It is part of what happened", "It belongs to what happened"));
        assertThat(events.next("page")).isEqualTo(STUDY);
        assertThat(served.client().get(STUDY).text()).contains("It belongs to what happened").doesNotContain("It is part of what");
    }

    @Test
    void what_does_not_show_on_a_page_leaves_it_as_it_is() throws IOException {
        String sheet = served.client().get(SHEET).text();
        change("cases/tide/case.md", text -> text.replace("It is part of what happened", "It belongs to what happened"));
        assertThat(served.client().get(SHEET).text()).isEqualTo(sheet);
    }

    @Test
    void an_error_keeps_the_last_good_page_and_says_where_it_is() throws IOException {
        String good = served.client().get(STUDY).text();
        PreviewClient.Events events = served.events(STUDY, ServedContent.version(good));
        events.strip();
        change("cases/tide/case.md", text -> text.replace("{wash.volume}", "{wash.nonsense}"));
        PreviewClient.Strip strip = events.strip();
        List<String> lines = Files.readAllLines(served.content().resolve("cases/tide/case.md"));
        long line = 1 + lines.stream().takeWhile(each -> !each.contains("{wash.nonsense}")).count();
        assertThat(strip.told()).anyMatch(each -> each.contains("cases/tide/case.md:" + line + ":") && each.contains("error FIG"));
        assertThat(strip.notices()).anyMatch(notice -> notice.contains("the last good one"));
        assertThat(served.client().get(STUDY).text()).isEqualTo(good);
        change("cases/tide/case.md", text -> text.replace("{wash.nonsense}", "{wash.total}"));
        assertThat(events.next("page")).isEqualTo(STUDY);
    }

    @Test
    void a_case_that_cannot_be_read_at_first_becomes_a_page_when_it_is_mended() throws IOException {
        String sound = Files.readString(served.content().resolve("cases/tide/case.md"));
        change("cases/tide/case.md", text -> text.replace("title: A tide", "title: [A tide"));
        PreviewClient.Answer none = served.client().get(STUDY);
        assertThat(none.status()).isEqualTo(404);
        PreviewClient.Events events = served.events(STUDY, ServedContent.version(none.text()));
        assertThat(events.strip().told()).anyMatch(each -> each.contains("cases/tide/case.md:3:"));
        change("cases/tide/case.md", text -> sound);
        assertThat(events.next("page")).isEqualTo(STUDY);
        assertThat(served.client().get(STUDY).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({"glossary.yaml, 'tideline:', 'fibre:\n  term: fibres\n  plain: Threads of cellulose.\ntideline:', " + STUDY
            + ", >fibres</a>",
        "glossary.yaml, A brown edge where, A tan edge where, site/glossary.html, A tan edge where",
        "materials/liquids.yaml, Deionised water, Deionized water, " + SHEET + ", Deionized water",
        "studio.yaml, 'name: ', 'name: The ', site/index.html, The "})
    void what_depends_on_a_shared_file_follows_it(String file, String from, String to, String page, String shown) throws IOException {
        PreviewClient.Events events = served.events(page, ServedContent.version(served.client().get(page).text()));
        events.strip();
        change(file, text -> text.replaceFirst(Pattern.quote(from), to));
        assertThat(events.next("page")).isEqualTo(page);
        assertThat(served.client().get(page).text()).contains(shown);
    }

    @Test
    void a_class_touches_its_own_case_and_a_new_title_the_pages_of_the_site() throws IOException {
        String course = "site/cases/tide/" + served.client().get("site/cases/tide/preparation.html").text()
                .replaceAll("(?s).*href=\"(class-[a-z-]+\\.html)\".*", "$1");
        assertThat(served.client().get(course).text()).contains("Washing a brittle sheet");
        change("classes/spring.yaml", text -> text.replace("Washing a brittle sheet", "Bathing a brittle sheet"));
        assertThat(served.client().get(course).text()).contains("Bathing a brittle sheet");
        change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: A sheet that met the ebb"));
        assertThat(served.client().get("site/index.html").text()).contains("A sheet that met the ebb");
    }

    @Test
    void a_slip_in_a_template_keeps_the_page_and_is_told_with_its_place() throws IOException {
        served.close();
        ChangedContent.copy(Path.of("templates"), folder.resolve("templates"));
        served = ServedContent.of(served.content());
        String good = served.client().get(STUDY).text();
        PreviewClient.Events events = served.events(STUDY, ServedContent.version(good));
        events.strip();
        change("../templates/page.ftl", text -> text.replace("</body>", "${page.nonsense}</body>"));
        assertThat(events.strip().told()).anyMatch(each -> each.contains("templates/page.ftl:"));
        assertThat(served.client().get(STUDY).text()).isEqualTo(good);
        change("../templates/page.ftl", text -> text.replace("${page.nonsense}</body>", "<p>Mended</p></body>"));
        assertThat(events.next("page")).isEqualTo(STUDY);
        assertThat(served.client().get(STUDY).text()).contains("<p>Mended</p>");
    }

    @Test
    void a_private_value_is_told_to_the_author_before_it_could_be_published() throws IOException {
        change("cases/tide/case.md", text -> text + "\nHalcyon Brandreth-Voss brought it.\n");
        PreviewClient.Events events = served.events(STUDY, ServedContent.version(served.client().get(STUDY).text()));
        PreviewClient.Strip strip = events.strip();
        assertThat(strip.told()).anyMatch(each -> each.contains("LEAK-001") && each.contains("case.md:"));
        assertThat(strip.notices()).anyMatch(notice -> notice.contains("private value"));
        assertThat(String.join("", strip.told())).doesNotContain("Halcyon Brandreth-Voss brought it");
    }

    @Test
    void a_draft_has_pages_for_its_author_and_none_in_an_edition() throws IOException {
        change("cases/tide/case.md", text -> text.replace("state: cleared", "state: draft"));
        PreviewClient.Answer page = served.client().get(STUDY);
        assertThat(page.status()).isEqualTo(200);
        assertThat(served.events(STUDY, ServedContent.version(page.text())).strip().notices()).anyMatch(notice -> notice.contains("draft"));
        Path site = folder.resolve("published/site");
        served.publish(site);
        assertThat(site.resolve("cases/tide")).doesNotExist();
    }

    @Test
    void nothing_is_written() throws IOException {
        Map<String, String> before = ServedContent.contents(folder);
        served.client().get(STUDY);
        served.client().get("site/index.html");
        served.events(SHEET, ServedContent.version(served.client().get(SHEET).text())).strip();
        assertThat(ServedContent.contents(folder)).isEqualTo(before);
    }

    @Test
    void the_command_tells_its_address_and_ends_when_it_is_stopped() throws IOException, InterruptedException {
        CountDownLatch isTold = new CountDownLatch(1);
        StringWriter told = new StringWriter() {
            @Override
            public void flush() {
                isTold.countDown();
            }
        };
        List<Integer> codes = new ArrayList<>();
        CommandLine line = new CommandLine(new PreviewCommand()).setOut(new PrintWriter(told)).setErr(new PrintWriter(told));
        Thread running = new Thread(() -> {
            codes.add(line.execute("--content", served.content().toString(), "--on", ServedContent.DAY.toString()));
            isTold.countDown();
        });
        running.start();
        isTold.await();
        String address = told.toString().replaceAll("(?s).*(http://\\S+).*", "$1");
        assertThat(new PreviewClient(address).get(SHEET).status()).isEqualTo(200);
        running.interrupt();
        running.join();
        assertThat(codes).containsExactly(0);
        assertThatThrownBy(() -> new PreviewClient(address).get(SHEET)).isInstanceOf(ConnectException.class);
    }

    private void change(String file, UnaryOperator<String> change) throws IOException {
        Path changed = served.content().resolve(file);
        String before = Files.readString(changed);
        String after = change.apply(before);
        assertThat(after).isNotEqualTo(before);
        Files.writeString(changed, after);
    }
}

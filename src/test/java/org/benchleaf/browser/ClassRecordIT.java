package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.benchleaf.command.RecordsCommand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import picocli.CommandLine;

/** The form in which a station of the demo's spring course writes down its day: what is typed is never lost. */
@Execution(ExecutionMode.CONCURRENT)
class ClassRecordIT {

    private static final String FORM = "cases/tide-table/class-spring-course-record.html";

    @Test
    void what_is_typed_is_there_after_a_reload_and_only_at_its_station() {
        atTheForm(window -> {
            choose(window, 4);
            type(window, "wash//0/done by", "D");
            window.again();
            assertThat(value(window, "wash//0/done by")).isEqualTo("D");
            choose(window, 5);
            assertThat(value(window, "wash//0/done by")).isEmpty();
            choose(window, 4);
            assertThat(value(window, "wash//0/done by")).isEqualTo("D");
        });
    }

    @Test
    void the_way_from_the_class_leads_to_the_record_of_the_station() {
        atTheForm(window -> {
            choose(window, 4);
            type(window, "wash//0/noticed", "the stamp stayed sharp");
            choose(window, 1);
            window.open("cases/tide-table/class-spring-course.html");
            assertThat(window.run("return document.querySelectorAll('a[href$=\"record.html#station-4\"]').length;")).isEqualTo(1L);
            window.open(FORM);
            assertThat(value(window, "wash//0/noticed")).isEmpty();
            window.run("location.hash = '#station-4';");
            window.until("document.getElementsByName('wash//0/noticed')[0].value");
            assertThat(value(window, "wash//0/noticed")).isEqualTo("the stamp stayed sharp");
        });
    }

    @Test
    void the_saved_file_is_read_by_the_program_and_by_an_empty_device() {
        atTheForm(window -> {
            choose(window, 4);
            type(window, "trainees", "Dora");
            type(window, "wash/readings/1/pH fresh", "8,5");
            type(window, "wash/readings/1/added", "about 3");
            type(window, "wash//0/began", "2026-04-14T10:55");
            type(window, "mark/1/1/met", "met");
            type(window, "mark/1/1/help next time", "3");
            String saved = saved(window);
            assertThat(saved).contains("\"station\": 4", "\"pH fresh\": \"pH 8.5\"", "\"began\": \"2026-04-14 10:55\"",
                    "\"help next time\": 3", "\"added\": \"about 3\"", "\"trainee\": \"D\"");
            assertThat(told(saved.replace("about 3", "3 mL"))).doesNotContain("error").contains("spring-course");
            assertThat(told(saved)).contains("error FORM");
            window.run("localStorage.clear();");
            window.again();
            opened(window, saved);
            assertThat(value(window, "trainees")).isEqualTo("Dora");
            assertThat(value(window, "wash/readings/1/pH fresh")).isEqualTo("8.5");
            assertThat(value(window, "wash/readings/1/added")).isEqualTo("about 3");
            assertThat(value(window, "wash//0/began")).isEqualTo("2026-04-14T10:55");
            assertThat(value(window, "mark/1/1/met")).isEqualTo("met");
        });
    }

    @Test
    void a_file_replaces_nothing_before_somebody_says_so() {
        atTheForm(window -> {
            choose(window, 4);
            type(window, "wash//0/initials", "D");
            String saved = saved(window);
            type(window, "wash//0/initials", "E");
            opened(window, saved);
            assertThat(value(window, "wash//0/initials")).isEqualTo("E");
            window.run("document.querySelector('.record__ask button').click();");
            assertThat(value(window, "wash//0/initials")).isEqualTo("D");
            opened(window, "{\"class\": \"another\", \"station\": 4, \"steps\": []}");
            assertThat(window.run("return document.querySelector('.record__told').textContent;")).asString()
                    .contains("Nothing was changed");
            assertThat(value(window, "wash//0/initials")).isEqualTo("D");
        });
    }

    @Test
    void a_full_store_is_told_and_the_file_still_holds_everything() {
        atTheForm(window -> {
            choose(window, 2);
            window.run("Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };");
            type(window, "wash//0/done by", "B");
            type(window, "dry//0/done by", "B too");
            assertThat(window.run("return document.querySelector('.record__told').textContent;")).asString()
                    .contains("save the file now");
            assertThat(saved(window)).contains("\"B\"", "\"B too\"");
            assertThat(window.run("const left = new Event('beforeunload', {cancelable: true}); window.dispatchEvent(left);"
                    + "return left.defaultPrevented;")).isEqualTo(true);
            window.run("delete Storage.prototype.setItem;");
        });
    }

    @Test
    void two_windows_lose_nothing_of_each_other() {
        atTheForm(window -> {
            choose(window, 2);
            window.run("const kept = JSON.parse(localStorage.getItem(localStorage.key(0)));"
                    + "kept.record.stations['3'] = {'wash//0/done by': 'C'};"
                    + "localStorage.setItem(localStorage.key(0), JSON.stringify(kept));");
            type(window, "wash//0/done by", "B");
            choose(window, 3);
            assertThat(value(window, "wash//0/done by")).isEqualTo("C");
        });
    }

    private static void atTheForm(Consumer<Window> work) {
        Windows.lend(window -> {
            window.open(FORM);
            window.run("localStorage.clear();");
            window.again();
            try {
                work.accept(window);
            } finally {
                window.run("localStorage.clear();");
            }
        });
    }

    private static void choose(Window window, int station) {
        window.run("document.querySelector(arguments[0]).click();", "[data-station='" + station + "']");
    }

    private static void type(Window window, String name, String text) {
        window.run("const field = document.getElementsByName(arguments[0])[0]; field.value = arguments[1];"
                + "field.dispatchEvent(new Event('input'));", name, text);
    }

    private static String value(Window window, String name) {
        return (String) window.run("return document.getElementsByName(arguments[0])[0].value;", name);
    }

    /** What the browser was asked to save. */
    private static String saved(Window window) {
        return window.textsLater("const done = arguments[0]; const click = HTMLAnchorElement.prototype.click;"
                + "URL.createObjectURL = blob => { blob.text().then(text => done([text])); return '#'; };"
                + "HTMLAnchorElement.prototype.click = () => {}; document.querySelector('[data-record=save]').click();"
                + "HTMLAnchorElement.prototype.click = click;").get(0);
    }

    private static void opened(Window window, String text) {
        window.run("const file = new DataTransfer(); file.items.add(new File([arguments[0]], 'station.json'));"
                + "const open = document.querySelector('[data-record=open]'); open.files = file.files;"
                + "open.dispatchEvent(new Event('change'));", text);
        window.until("document.querySelector('[data-record=open]').files.length === 0");
    }

    private static String told(String saved) {
        try {
            Path folder = Files.createTempDirectory("records");
            Files.writeString(folder.resolve("station.json"), saved);
            StringWriter told = new StringWriter();
            new CommandLine(new RecordsCommand()).setErr(new PrintWriter(told, true)).execute(folder.toString());
            return told.toString();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}

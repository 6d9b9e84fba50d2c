package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.benchleaf.ChangedContent;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Ageing made faster has a temperature and a humidity, or says that nobody recorded them: the rate of ageing depends on both
 * (ISO 5630-1 ages in dry heat, ISO 5630-3 in moist heat; from memory).
 */
class AgeingConditionsTest {

    private static final Path RESOURCES = Path.of("src/test/resources");
    private static final String CONDITIONS = "temperature: 80 °C, humidity: 65 % RH, ";

    @TempDir
    private Path folder;
    private Path content;
    private String told;

    @BeforeEach
    void change() throws IOException {
        content = folder.resolve("content");
        ChangedContent.of(RESOURCES.resolve("sound/base"), RESOURCES.resolve("kinds/change.txt"), content);
    }

    @Test
    void a_humidity_left_out_is_asked_for() throws IOException {
        conditions("temperature: 80 °C, ");
        assertThat(run(new CheckCommand())).isEqualTo(1);
        assertThat(told).contains("'humidity'").doesNotContain("'temperature'");
    }

    @Test
    void a_temperature_left_out_is_asked_for() throws IOException {
        conditions("humidity: 65 % RH, ");
        assertThat(run(new CheckCommand())).isEqualTo(1);
        assertThat(told).contains("'temperature'").doesNotContain("'humidity'");
    }

    @Test
    void what_nobody_recorded_is_told_as_that() throws IOException {
        assertThat(ageing("temperature: not known, humidity: not known, ")).contains("Temperature not recorded", "Humidity not recorded");
    }

    @Test
    void dry_heat_has_no_humidity() throws IOException {
        assertThat(ageing("temperature: 105 °C, humidity: not applicable, ")).contains("Temperature 105 °C", "Humidity does not apply");
    }

    private void conditions(String instead) throws IOException {
        Path file = content.resolve("cases/stains/case.md");
        String text = Files.readString(file);
        assertThat(text).contains(CONDITIONS);
        Files.writeString(file, text.replace(CONDITIONS, instead));
    }

    /** The step on the step sheet, published with other conditions. */
    private String ageing(String conditions) throws IOException {
        conditions(conditions);
        Path site = folder.resolve("site");
        assertThat(run(new PublishCommand(), "--site", site.toString(), "--on", "2026-06-01")).as(told).isZero();
        return Jsoup.parse(Files.readString(site.resolve("cases/stains/steps.html"))).text().replace('\u202F', ' ').replace('\u00A0', ' ');
    }

    private int run(Callable<Integer> command, String... more) {
        StringWriter words = new StringWriter();
        String[] arguments = new String[more.length + 2];
        arguments[0] = "--content";
        arguments[1] = content.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        int code = new CommandLine(command).setOut(new PrintWriter(words)).setErr(new PrintWriter(words)).execute(arguments);
        told = words.toString();
        return code;
    }
}

package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.benchleaf.ChangedContent;
import org.benchleaf.command.PreviewClient;
import org.benchleaf.command.PreviewCommand;
import org.benchleaf.command.PublishCommand;
import org.benchleaf.command.TemplateChoice;
import org.benchleaf.preview.PreviewServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/**
 * The preview, asked as a browser asks it. Answers to requests: RFC 9110; what a page is told: server-sent events (HTML Living
 * Standard, section 9.2).
 */
class PreviewTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final String STUDY = "site/cases/tide/index.html";
    private static final String SHEET = "site/cases/tide/steps.html";
    /** What a class has to say so that it is planned and has pages. */
    private static final String CLASS_DAY = """
            publish: yes
            people: {supervisors: 2}
            shared:
              - {thing: board, count: 6}
              - {thing: hood, count: 6}
              - {thing: pH meter, count: 6}
              - {thing: sink, count: 6}
              - {thing: tray, count: 6}
              - {thing: weight, count: 6}
            """;
    private static final Pattern VERSION = Pattern.compile("preview\\.js\\?version=(\\d+)");

    @TempDir
    private Path folder;
    private Path content;
    private PreviewServer server;
    private final List<PreviewClient.Events> open = new ArrayList<>();

    @BeforeEach
    void start() throws IOException {
        content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
        change("classes/spring.yaml", text -> text + CLASS_DAY);
        serve();
    }

    private void serve() throws IOException {
        WarmStudio studio = new WarmStudio(content, TemplateChoice.of(content, Optional.empty()), () -> DAY);
        server = PreviewServer.start(new StudioPreview(content, studio, Clock.systemUTC()), 0);
    }

    @AfterEach
    void stop() throws IOException {
        for (PreviewClient.Events each : open) {
            each.close();
        }
        server.close();
    }

    @Test
    void every_page_is_that_of_an_edition_but_for_the_script_of_the_preview() throws IOException {
        Path site = folder.resolve("published/site");
        assertThat(publish(site)).isZero();
        Map<String, String> published = contents(site);
        List<String> pages = published.keySet().stream().filter(path -> path.endsWith(".html")).toList();
        assertThat(pages).contains("index.html", "glossary.html", "cases/tide/preparation.html").hasSizeGreaterThan(20);
        for (String page : pages) {
            String shown = client().get("site/" + page).text();
            assertThat(VERSION.matcher(shown).find()).as(page).isTrue();
            assertThat(shown.replaceAll("<script defer src=\"[^\"]*preview\\.js[^\"]*\"></script>\n", "")).as(page)
                    .isEqualTo(published.get(page));
        }
        for (String file : published.keySet().stream()
                .filter(path -> !path.endsWith(".html") && !path.equals("edition.json") && !isOfTheSearch(path)).toList()) {
            PreviewClient.Answer shown = client().get("site/" + file);
            assertThat(shown.status()).as(file).isEqualTo(200);
            assertThat(new String(shown.body(), StandardCharsets.ISO_8859_1)).as(file).isEqualTo(published.get(file));
        }
    }

    /** Read off all finished pages, of which a preview makes only those that are looked at. */
    private static boolean isOfTheSearch(String path) {
        return path.startsWith("assets/search-index") || path.endsWith("-sentences.js");
    }

    @Test
    void a_picture_has_the_width_that_its_page_names() throws IOException {
        String page = client().get(STUDY).text();
        Matcher named = Pattern.compile("(pictures/[a-z-]+-(\\d+)\\.jpg)").matcher(page);
        assertThat(named.find()).isTrue();
        byte[] picture = client().get("site/cases/tide/" + named.group(1)).body();
        assertThat(ImageIO.read(new ByteArrayInputStream(picture)).getWidth()).isEqualTo(Integer.parseInt(named.group(2)));
    }

    @Test
    void the_list_leads_to_every_case() throws IOException {
        assertThat(client().get("").text()).contains("href=\"site/cases/tide/index.html\"", "href=\"site/index.html\"");
    }

    /** The status codes: RFC 9110, sections 15.5.4, 15.5.6 and 15.5.20. */
    @ParameterizedTest
    @CsvSource({"GET, Host: localhost:PORT, 421", "GET, Host: rebound.example:PORT, 421", "GET, Host: 127.0.0.1, 421",
        "GET, Origin: http://127.0.0.1:1, 403", "GET, Origin: null, 403", "GET, Origin: https://studio.example, 403",
        "GET, Sec-Fetch-Site: cross-site, 403", "GET, Sec-Fetch-Site: same-site, 403", "POST, X-Nothing: 1, 405",
        "PUT, X-Nothing: 1, 405", "GET, Origin: http://127.0.0.1:PORT, 200", "GET, Sec-Fetch-Site: same-origin, 200",
        "GET, Sec-Fetch-Site: none, 200"})
    void who_may_ask(String method, String header, int status) throws IOException {
        assertThat(client().ask(method, client().token() + "site/assets/preview.js", header).status()).isEqualTo(status);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/site/index.html", "/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA/site/index.html", "/events"})
    void without_its_address_nothing_is_served(String path) throws IOException {
        assertThat(client().ask("GET", path, "X-Nothing: 1").status()).isEqualTo(403);
    }

    @Test
    void no_path_leads_out_of_the_site() throws IOException {
        for (String path : List.of("../content/studio.yaml", "site/../../content/studio.yaml", "site/%2e%2e/%2e%2e/studio.yaml",
                "site/cases/tide/case.md", "site/cases/tide/../tide/case.md", "site//etc/passwd",
                "site/cases/tide/pictures/before-recto.jpg", "site/cases/tide%00.html/case.md", "site/..%5c..%5cstudio.yaml",
                "site/cases/../../../content/cases/tide/index.html", "other/index.html", "site")) {
            PreviewClient.Answer answer = client().get(path);
            assertThat(answer.status()).as(path).isBetween(400, 404);
            assertThat(answer.text()).as(path).doesNotContain("Halcyon", "kept at");
        }
    }

    @Test
    void other_machines_do_not_reach_it() throws IOException {
        int port = URI.create(server.address()).getPort();
        List<InetAddress> others = NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress()).toList();
        for (InetAddress other : others) {
            assertThatThrownBy(() -> new Socket(other, port).close()).isInstanceOf(ConnectException.class);
        }
        assertThat(URI.create(server.address()).getHost()).isEqualTo("127.0.0.1");
    }

    @Test
    void an_open_page_is_told_when_its_case_has_changed() throws IOException {
        String before = client().get(STUDY).text();
        PreviewClient.Events events = events(STUDY, version(before));
        assertThat(events.strip()).isNotNull();
        change("cases/tide/case.md", text -> text.replace("It is part of what happened", "It belongs to what happened"));
        assertThat(events.next("page")).isEqualTo(STUDY);
        assertThat(client().get(STUDY).text()).contains("It belongs to what happened").doesNotContain("It is part of what");
    }

    @Test
    void what_does_not_show_on_a_page_leaves_it_as_it_is() throws IOException {
        String sheet = client().get(SHEET).text();
        change("cases/tide/case.md", text -> text.replace("It is part of what happened", "It belongs to what happened"));
        assertThat(client().get(SHEET).text()).isEqualTo(sheet);
    }

    @Test
    void an_error_keeps_the_last_good_page_and_says_where_it_is() throws IOException {
        String good = client().get(STUDY).text();
        PreviewClient.Events events = events(STUDY, version(good));
        events.strip();
        change("cases/tide/case.md", text -> text.replace("{wash.volume}", "{wash.nonsense}"));
        PreviewClient.Strip strip = events.strip();
        List<String> lines = Files.readAllLines(content.resolve("cases/tide/case.md"));
        long line = 1 + lines.stream().takeWhile(each -> !each.contains("{wash.nonsense}")).count();
        assertThat(strip.told()).anyMatch(each -> each.contains("cases/tide/case.md:" + line + ":") && each.contains("error FIG"));
        assertThat(strip.notices()).anyMatch(notice -> notice.contains("the last good one"));
        assertThat(client().get(STUDY).text()).isEqualTo(good);
        change("cases/tide/case.md", text -> text.replace("{wash.nonsense}", "{wash.total}"));
        assertThat(events.next("page")).isEqualTo(STUDY);
    }

    @Test
    void a_case_that_cannot_be_read_at_first_becomes_a_page_when_it_is_mended() throws IOException {
        String sound = Files.readString(content.resolve("cases/tide/case.md"));
        change("cases/tide/case.md", text -> text.replace("title: A tide", "title: [A tide"));
        PreviewClient.Answer none = client().get(STUDY);
        assertThat(none.status()).isEqualTo(404);
        PreviewClient.Events events = events(STUDY, version(none.text()));
        assertThat(events.strip().told()).anyMatch(each -> each.contains("cases/tide/case.md:3:"));
        change("cases/tide/case.md", text -> sound);
        assertThat(events.next("page")).isEqualTo(STUDY);
        assertThat(client().get(STUDY).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({"glossary.yaml, 'tideline:', 'fibre:\n  term: fibres\n  plain: Threads of cellulose.\ntideline:', " + STUDY
            + ", >fibres</a>",
        "glossary.yaml, A brown edge where, A tan edge where, site/glossary.html, A tan edge where",
        "materials/liquids.yaml, Deionised water, Deionized water, " + SHEET + ", Deionized water",
        "studio.yaml, 'name: ', 'name: The ', site/index.html, The "})
    void what_depends_on_a_shared_file_follows_it(String file, String from, String to, String page, String shown) throws IOException {
        PreviewClient.Events events = events(page, version(client().get(page).text()));
        events.strip();
        change(file, text -> text.replaceFirst(Pattern.quote(from), to));
        assertThat(events.next("page")).isEqualTo(page);
        assertThat(client().get(page).text()).contains(shown);
    }

    @Test
    void a_class_touches_its_own_case_and_a_new_title_the_pages_of_the_site() throws IOException {
        String course = "site/cases/tide/" + client().get("site/cases/tide/preparation.html").text()
                .replaceAll("(?s).*href=\"(class-[a-z-]+\\.html)\".*", "$1");
        assertThat(client().get(course).text()).contains("Washing a brittle sheet");
        change("classes/spring.yaml", text -> text.replace("Washing a brittle sheet", "Bathing a brittle sheet"));
        assertThat(client().get(course).text()).contains("Bathing a brittle sheet");
        change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: A sheet that met the ebb"));
        assertThat(client().get("site/index.html").text()).contains("A sheet that met the ebb");
    }

    @Test
    void a_slip_in_a_template_keeps_the_page_and_is_told_with_its_place() throws IOException {
        server.close();
        ChangedContent.copy(Path.of("templates"), folder.resolve("templates"));
        serve();
        String good = client().get(STUDY).text();
        PreviewClient.Events events = events(STUDY, version(good));
        events.strip();
        change("../templates/page.ftl", text -> text.replace("</body>", "${page.nonsense}</body>"));
        assertThat(events.strip().told()).anyMatch(each -> each.contains("templates/page.ftl:"));
        assertThat(client().get(STUDY).text()).isEqualTo(good);
        change("../templates/page.ftl", text -> text.replace("${page.nonsense}</body>", "<p>Mended</p></body>"));
        assertThat(events.next("page")).isEqualTo(STUDY);
        assertThat(client().get(STUDY).text()).contains("<p>Mended</p>");
    }

    @Test
    void a_private_value_is_told_to_the_author_before_it_could_be_published() throws IOException {
        change("cases/tide/case.md", text -> text + "\nHalcyon Brandreth-Voss brought it.\n");
        PreviewClient.Events events = events(STUDY, version(client().get(STUDY).text()));
        PreviewClient.Strip strip = events.strip();
        assertThat(strip.told()).anyMatch(each -> each.contains("LEAK-001") && each.contains("case.md:"));
        assertThat(strip.notices()).anyMatch(notice -> notice.contains("private value"));
        assertThat(String.join("", strip.told())).doesNotContain("Halcyon Brandreth-Voss brought it");
    }

    @Test
    void a_draft_has_pages_for_its_author_and_none_in_an_edition() throws IOException {
        change("cases/tide/case.md", text -> text.replace("state: cleared", "state: draft"));
        PreviewClient.Answer page = client().get(STUDY);
        assertThat(page.status()).isEqualTo(200);
        assertThat(events(STUDY, version(page.text())).strip().notices()).anyMatch(notice -> notice.contains("draft"));
        Path site = folder.resolve("published/site");
        publish(site);
        assertThat(site.resolve("cases/tide")).doesNotExist();
    }

    @Test
    void nothing_is_written() throws IOException {
        Map<String, String> before = contents(folder);
        client().get(STUDY);
        client().get("site/index.html");
        events(SHEET, version(client().get(SHEET).text())).strip();
        assertThat(contents(folder)).isEqualTo(before);
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
            codes.add(line.execute("--content", content.toString(), "--on", DAY.toString()));
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

    @Test
    void a_port_that_is_taken_is_told() {
        StringWriter told = new StringWriter();
        int code = new CommandLine(new PreviewCommand()).setErr(new PrintWriter(told)).setOut(new PrintWriter(told))
                .execute("--content", content.toString(), "--port", String.valueOf(URI.create(server.address()).getPort()));
        assertThat(code).isEqualTo(2);
        assertThat(told.toString()).contains("--port", "cannot be used here");
    }

    private PreviewClient client() {
        return new PreviewClient(server.address());
    }

    private PreviewClient.Events events(String page, String version) throws IOException {
        PreviewClient.Events events = client().events(page, version);
        open.add(events);
        return events;
    }

    private static String version(String page) {
        Matcher version = VERSION.matcher(page);
        assertThat(version.find()).isTrue();
        return version.group(1);
    }

    private void change(String file, UnaryOperator<String> change) throws IOException {
        Path changed = content.resolve(file);
        String before = Files.readString(changed);
        String after = change.apply(before);
        assertThat(after).isNotEqualTo(before);
        Files.writeString(changed, after);
    }

    private int publish(Path site) throws IOException {
        Files.createDirectories(site.getParent());
        StringWriter told = new StringWriter();
        return new CommandLine(new PublishCommand()).setErr(new PrintWriter(told)).setOut(new PrintWriter(told))
                .execute("--content", content.toString(), "--site", site.toString(), "--on", DAY.toString());
    }

    /** Every file below a folder, by its path, its bytes seen as letters. */
    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString().replace('\\', '/'), file.toString().endsWith(".html")
                        ? Files.readString(file) : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }
}

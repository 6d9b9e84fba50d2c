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
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.benchleaf.command.PreviewClient;
import org.benchleaf.command.PreviewCommand;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What a preview answers to requests that change nothing, so that all are put to one. The answers: RFC 9110. */
class PreviewRequestsTest {

    private static final String STUDY = "site/cases/tide/index.html";

    @TempDir
    private static Path folder;
    private static ServedContent served;

    @BeforeAll
    static void start() throws IOException {
        served = ServedContent.in(folder);
    }

    @AfterAll
    static void stop() throws IOException {
        served.close();
    }

    @Test
    void every_page_is_that_of_an_edition_but_for_the_script_of_the_preview() throws IOException {
        Path site = folder.resolve("published/site");
        assertThat(served.publish(site)).isZero();
        Map<String, String> published = ServedContent.contents(site);
        List<String> pages = published.keySet().stream().filter(path -> path.endsWith(".html")).toList();
        assertThat(pages).contains("index.html", "glossary.html", "cases/tide/preparation.html").hasSizeGreaterThan(20);
        for (String page : pages) {
            String shown = served.client().get("site/" + page).text();
            assertThat(ServedContent.VERSION.matcher(shown).find()).as(page).isTrue();
            assertThat(shown.replaceAll("<script defer src=\"[^\"]*preview\\.js[^\"]*\"></script>\n", "")).as(page)
                    .isEqualTo(published.get(page));
        }
        for (String file : published.keySet().stream()
                .filter(path -> !path.endsWith(".html") && !path.equals("edition.json") && !isOfTheSearch(path)).toList()) {
            PreviewClient.Answer shown = served.client().get("site/" + file);
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
        String page = served.client().get(STUDY).text();
        Matcher named = Pattern.compile("(pictures/[a-z-]+-(\\d+)\\.jpg)").matcher(page);
        assertThat(named.find()).isTrue();
        byte[] picture = served.client().get("site/cases/tide/" + named.group(1)).body();
        assertThat(ImageIO.read(new ByteArrayInputStream(picture)).getWidth()).isEqualTo(Integer.parseInt(named.group(2)));
    }

    @Test
    void the_list_leads_to_every_case() throws IOException {
        assertThat(served.client().get("").text()).contains("href=\"site/cases/tide/index.html\"", "href=\"site/index.html\"");
    }

    /** The status codes: RFC 9110, sections 15.5.4, 15.5.6 and 15.5.20. */
    @ParameterizedTest
    @CsvSource({"GET, Host: localhost:PORT, 421", "GET, Host: rebound.example:PORT, 421", "GET, Host: 127.0.0.1, 421",
        "GET, Origin: http://127.0.0.1:1, 403", "GET, Origin: null, 403", "GET, Origin: https://studio.example, 403",
        "GET, Sec-Fetch-Site: cross-site, 403", "GET, Sec-Fetch-Site: same-site, 403", "POST, X-Nothing: 1, 405",
        "PUT, X-Nothing: 1, 405", "GET, Origin: http://127.0.0.1:PORT, 200", "GET, Sec-Fetch-Site: same-origin, 200",
        "GET, Sec-Fetch-Site: none, 200"})
    void who_may_ask(String method, String header, int status) throws IOException {
        assertThat(served.client().ask(method, served.client().token() + "site/assets/preview.js", header).status()).isEqualTo(status);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/site/index.html", "/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA/site/index.html", "/events"})
    void without_its_address_nothing_is_served(String path) throws IOException {
        assertThat(served.client().ask("GET", path, "X-Nothing: 1").status()).isEqualTo(403);
    }

    @Test
    void no_path_leads_out_of_the_site() throws IOException {
        for (String path : List.of("../content/studio.yaml", "site/../../content/studio.yaml", "site/%2e%2e/%2e%2e/studio.yaml",
                "site/cases/tide/case.md", "site/cases/tide/../tide/case.md", "site//etc/passwd",
                "site/cases/tide/pictures/before-recto.jpg", "site/cases/tide%00.html/case.md", "site/..%5c..%5cstudio.yaml",
                "site/cases/../../../content/cases/tide/index.html", "other/index.html", "site")) {
            PreviewClient.Answer answer = served.client().get(path);
            assertThat(answer.status()).as(path).isBetween(400, 404);
            assertThat(answer.text()).as(path).doesNotContain("Halcyon", "kept at");
        }
    }

    @Test
    void other_machines_do_not_reach_it() throws IOException {
        int port = URI.create(served.address()).getPort();
        List<InetAddress> others = NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress()).toList();
        for (InetAddress other : others) {
            assertThatThrownBy(() -> new Socket(other, port).close()).isInstanceOf(ConnectException.class);
        }
        assertThat(URI.create(served.address()).getHost()).isEqualTo("127.0.0.1");
    }

    @Test
    void a_port_that_is_taken_is_told() {
        StringWriter told = new StringWriter();
        int code = new CommandLine(new PreviewCommand()).setErr(new PrintWriter(told)).setOut(new PrintWriter(told))
                .execute("--content", served.content().toString(), "--port", String.valueOf(URI.create(served.address()).getPort()));
        assertThat(code).isEqualTo(2);
        assertThat(told.toString()).contains("--port", "cannot be used here");
    }
}

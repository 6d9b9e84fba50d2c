package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The manifests of the demo's pictures in a general viewer for the IIIF Presentation API, Mirador 4.0.0, which is no part of the
 * project: it lists every picture, offers before and after, draws the files and shows the marks.
 */
@Execution(ExecutionMode.CONCURRENT)
class PictureViewerIT {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String SITE = "https://tarn-quay.example/";
    private static final String SHOWN = "document.querySelector('#viewer').innerText";
    private static LocalServer server;

    @BeforeAll
    static void serve() throws IOException {
        server = new LocalServer("/", PictureViewerIT::file);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    static List<String> manifests() throws IOException {
        Path root = SiteUnderTest.demo().root();
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.endsWith("manifest.json")).map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted().toList();
        }
    }

    /** The site's files with this server in the place of its address, the viewer, and a page of it with one of its panels open. */
    private static Optional<byte[]> file(String path) throws IOException {
        if (path.equals("viewer.js")) {
            return Optional.of(viewer());
        }
        if (path.startsWith("panel/")) {
            return Optional.of(page(path.split("/", 3)).getBytes(StandardCharsets.UTF_8));
        }
        Path file = SiteUnderTest.demo().root().resolve(path);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        return Optional.of(path.endsWith(".json")
                ? Files.readString(file).replace(SITE, server.address("")).getBytes(StandardCharsets.UTF_8)
                : Files.readAllBytes(file));
    }

    private static byte[] viewer() throws IOException {
        try (InputStream in = new GZIPInputStream(PictureViewerIT.class.getResourceAsStream("/open-data/mirador-4.0.0.min.js.gz"))) {
            return in.readAllBytes();
        }
    }

    private static String page(String... panelAndManifest) {
        return "<!doctype html><meta charset=\"utf-8\"><title>Viewer</title><div id=\"viewer\"></div><script src=\"/viewer.js\"></script>"
                + "<script>Mirador.viewer({id: 'viewer', window: {sideBarOpen: true, panels: {canvas: true, layers: true, annotations: "
                + "true}},"
                + "windows: [{sideBarPanel: '" + panelAndManifest[1] + "', manifestId: '"
                + server.address(panelAndManifest[2].replace(".html", ".json")) + "'}]});</script>";
    }

    private static void open(Window window, String panel, String manifest, String shown) {
        window.visit(server.address("panel/" + panel + "/" + manifest.replace(".json", ".html")));
        window.until(SHOWN + ".includes(" + JSON.valueToTree(shown) + ")");
    }

    private static List<String> texts(JsonNode found) {
        return StreamSupport.stream(found.spliterator(), false).map(JsonNode::asText).toList();
    }

    private static JsonNode read(String manifest) throws IOException {
        return JSON.readTree(SiteUnderTest.demo().bytes(manifest));
    }

    @ParameterizedTest
    @MethodSource("manifests")
    void it_lists_every_picture_of_a_case_and_draws_the_first(String manifest) throws IOException {
        JsonNode told = read(manifest);
        List<String> labels = new ArrayList<>();
        told.get("items").forEach(canvas -> labels.addAll(texts(canvas.at("/label").elements().next())));
        List<String> drawn = told.at("/items/0").findParents("format").stream().filter(body -> body.path("type").asText().equals("Image"))
                .map(body -> body.get("id").asText().substring(SITE.length())).toList();
        assertThat(drawn).isNotEmpty();
        Windows.lend(window -> {
            open(window, "canvas", manifest, "1 of " + labels.size());
            String shown = (String) window.run("return " + SHOWN + ";");
            assertThat(shown).contains(labels).contains(texts(told.at("/label").elements().next()));
            window.until("performance.getEntriesByType('resource').some(one => one.name.endsWith('" + drawn.get(0)
                    + "') && one.responseEnd)");
            assertThat(server.asked()).contains(drawn.get(0));
        });
    }

    @Test
    void before_and_after_stand_there_to_be_chosen() {
        Windows.lend(window -> {
            open(window, "layers", "cases/tide-table/manifest.json", "1 of ");
            window.until(SHOWN + ".includes('Before') && " + SHOWN + ".includes('After')");
        });
    }

    @ParameterizedTest
    @MethodSource("manifests")
    void every_mark_of_the_first_picture_is_read_out_beside_it(String manifest) throws IOException {
        List<String> marks = read(manifest).at("/items/0/annotations").findValuesAsText("value");
        Windows.lend(window -> {
            open(window, "annotations", manifest, "1 of ");
            marks.forEach(mark -> window.until(SHOWN + ".includes(" + JSON.valueToTree(mark) + ")"));
        });
    }
}

package org.benchleaf.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;

/**
 * A window of Firefox without a screen, spoken to by WebDriver BiDi (W3C, working draft), which needs no program between. It
 * stands beside Chromium as a second opinion.
 */
final class Firefox implements AutoCloseable {

    private static final List<String> NAMES = List.of("firefox-esr", "firefox");
    private static final Pattern LISTENS = Pattern.compile("WebDriver BiDi listening on (ws://\\S+)");
    private static final long SECONDS_FOR_AN_ANSWER = 120;
    private static final long LOOK_EVERY_MILLISECONDS = 50;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Process process;
    private final Path root;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
    private final Queue<String> console = new ConcurrentLinkedQueue<>();
    private final AtomicInteger last = new AtomicInteger();
    private final String context;

    private Firefox(Process process, String address, Path root) {
        this.process = process;
        this.root = root;
        this.socket = HttpClient.newHttpClient().newWebSocketBuilder()
                .buildAsync(URI.create(address + "/session"), new Ear()).join();
        ask("session.new", Map.of("capabilities", Map.of()));
        ask("session.subscribe", Map.of("events", List.of("log.entryAdded")));
        this.context = ask("browsingContext.getTree", Map.of()).at("/contexts/0/context").asText();
    }

    /** A window on the site in that folder, where Firefox is on this machine or may be installed. */
    static Optional<Firefox> on(Path root) {
        return ofThisMachine().map(program -> {
            try {
                Path profile = Files.createTempDirectory(Files.createDirectories(Path.of("target", "browser")), "firefox");
                Path said = Files.createFile(profile.resolve("said.txt"));
                Process process = new ProcessBuilder(program.toString(), "--headless", "--no-remote", "--profile",
                        profile.toAbsolutePath().toString(), "--remote-debugging-port=0")
                        .redirectErrorStream(true).redirectOutput(said.toFile()).start();
                return new Firefox(process, address(process, said), root);
            } catch (IOException broken) {
                throw new UncheckedIOException("Firefox does not start", broken);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("stopped while Firefox started", stopped);
            }
        });
    }

    private static synchronized Optional<Path> ofThisMachine() {
        return Programs.found(NAMES).or(() -> {
            Programs.installOnDebian("firefox-esr");
            return Programs.found(NAMES);
        });
    }

    /** Where the browser listens, which it tells in its first lines. */
    private static String address(Process process, Path said) throws IOException, InterruptedException {
        while (!process.waitFor(LOOK_EVERY_MILLISECONDS, TimeUnit.MILLISECONDS)) {
            Matcher listens = LISTENS.matcher(Files.readString(said));
            if (listens.find()) {
                return listens.group(1);
            }
        }
        throw new IllegalStateException("Firefox ended without telling where it listens; " + said + " says why");
    }

    /** Has a script run in every page before its own. */
    void beforeEachPage(String script) {
        ask("script.addPreloadScript", Map.of("functionDeclaration", "() => {" + script + "}"));
    }

    /** Opens a page from its file in a window of that width. */
    void open(String page, int width) {
        console.clear();
        ask("browsingContext.setViewport", Map.of("context", context, "viewport", Map.of("width", width, "height", Window.HEIGHT)));
        ask("browsingContext.navigate", Map.of("context", context, "url", root.toUri() + page, "wait", "complete"));
    }

    /** The texts that the body of a function gives back, or hands to its last argument. */
    List<String> texts(String body, boolean later, Object... arguments) {
        return texts(answer(body, later, arguments));
    }

    /** The lists of texts that the body of a function gives back. */
    List<List<String>> lists(String body) {
        return StreamSupport.stream(answer(body, false).spliterator(), false).map(Firefox::texts).toList();
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
    }

    private JsonNode answer(String body, boolean later, Object... arguments) {
        String call = later ? "new Promise(done => (function () {" + body + "}).call(null, ..." + json(arguments) + ", done))"
                : "(function () {" + body + "}).apply(null, " + json(arguments) + ")";
        JsonNode answer = ask("script.evaluate", Map.of("expression", "Promise.resolve(" + call + ").then(JSON.stringify)",
                "target", Map.of("context", context), "awaitPromise", true));
        if (!answer.path("type").asText().equals("success")) {
            throw new IllegalStateException("a script failed: " + answer);
        }
        return read(answer.at("/result/value").asText());
    }

    /** What the console said since the page was opened, warnings and errors alone. */
    List<String> console() {
        return List.copyOf(console);
    }

    private JsonNode ask(String method, Map<String, ?> parameters) {
        int id = last.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        asked.put(id, answer);
        socket.sendText(json(Map.of("id", id, "method", method, "params", parameters)), true).join();
        return answer.orTimeout(SECONDS_FOR_AN_ANSWER, TimeUnit.SECONDS).join();
    }

    private void hear(JsonNode said) {
        if (said.has("id") && !said.path("id").isNull()) {
            CompletableFuture<JsonNode> answer = asked.remove(said.path("id").asInt());
            if (said.path("type").asText().equals("success")) {
                answer.complete(said.path("result"));
            } else {
                answer.completeExceptionally(new IllegalStateException(said.toString()));
            }
        } else if (said.path("method").asText().equals("log.entryAdded")
                && List.of("error", "warn").contains(said.at("/params/level").asText())) {
            console.add(said.at("/params/text").asText());
        }
    }

    private static String json(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static JsonNode read(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("Firefox said what is no JSON", broken);
        }
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
    }

    /** Puts the pieces of a message together. */
    private final class Ear implements WebSocket.Listener {

        private final StringBuilder heard = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence piece, boolean whole) {
            heard.append(piece);
            if (whole) {
                hear(read(heard.toString()));
                heard.setLength(0);
            }
            from.request(1);
            return null;
        }
    }
}

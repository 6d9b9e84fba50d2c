package org.benchleaf.preview;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.benchleaf.publish.SiteFile;

/**
 * Serves a site to browsers on this machine alone, under an address that cannot be guessed, and tells open pages when they have
 * changed.
 *
 * <p>Files are found by their names in the site, never by a path on the disk. Nothing is written.
 */
public final class PreviewServer implements AutoCloseable {

    static {
        // Before the first use of the server: without it each small answer waits for 40 ms, and a slow sender for ever.
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxReqTime", "30");
    }

    private static final int TOKEN_BYTES = 24;
    private static final int MOST_THREADS = 48;
    private static final String SCRIPT = "preview.js";
    private static final Map<String, String> TYPES = Map.ofEntries(Map.entry("html", "text/html; charset=utf-8"),
            Map.entry("css", "text/css; charset=utf-8"), Map.entry("js", "text/javascript; charset=utf-8"),
            Map.entry("json", "application/json"), Map.entry("svg", "image/svg+xml"), Map.entry("jpg", "image/jpeg"),
            Map.entry("csv", "text/csv; charset=utf-8"), Map.entry("ics", "text/calendar; charset=utf-8"),
            Map.entry("txt", "text/plain; charset=utf-8"), Map.entry("woff2", "font/woff2"));

    private final PreviewedSite site;
    private final Watch watch;
    private final HttpServer server;
    private final ThreadPoolExecutor threads;
    private final String origin;
    private final String token;
    private final CountDownLatch closed = new CountDownLatch(1);

    private PreviewServer(PreviewedSite site, int port) throws IOException {
        this.site = site;
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port), 0);
        byte[] random = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(random);
        this.token = Base64.getUrlEncoder().withoutPadding().encodeToString(random);
        this.origin = "127.0.0.1:" + server.getAddress().getPort();
        this.watch = new Watch(site);
        this.threads = new ThreadPoolExecutor(MOST_THREADS, MOST_THREADS, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), Watch::daemon);
        threads.allowCoreThreadTimeOut(true);
        server.setExecutor(threads);
        server.createContext("/", this::handle);
        server.start();
    }

    /**
     * Starts to serve.
     *
     * @param port from 1 to 65535; 0 to let the system choose one
     * @throws IOException if the port is in use or may not be used
     */
    public static PreviewServer start(PreviewedSite site, int port) throws IOException {
        return new PreviewServer(site, port);
    }

    /** The name of the script that a page of this version loads, as a page names its scripts. */
    public static String script(int version) {
        return SCRIPT + "?version=" + version;
    }

    /** The address of the list of sites and cases. */
    public String address() {
        return "http://" + origin + "/" + token + "/";
    }

    /** Waits until it is closed. */
    public void await() throws InterruptedException {
        closed.await();
    }

    @Override
    public void close() {
        watch.close();
        server.stop(0);
        threads.shutdownNow();
        closed.countDown();
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            Optional<Integer> refused = refusal(exchange);
            if (refused.isPresent()) {
                exchange.sendResponseHeaders(refused.get(), -1);
                return;
            }
            headers(exchange);
            String path = exchange.getRequestURI().getPath().substring(token.length() + 2);
            if (path.equals("events")) {
                Map<String, String> asked = query(exchange);
                watch.tell(exchange, asked.getOrDefault("page", ""), asked.getOrDefault("version", ""));
            } else {
                answer(exchange, path);
            }
        }
    }

    /** The status with which a request is refused; empty if it comes from a page of this server, or from its reader. */
    private Optional<Integer> refusal(HttpExchange exchange) {
        var headers = exchange.getRequestHeaders();
        if (!origin.equals(headers.getFirst("Host"))) {
            // Else another site could give its own name this address, and read what is served (DNS rebinding).
            return Optional.of(421);
        }
        String from = headers.getFirst("Origin");
        String fetch = headers.getFirst("Sec-Fetch-Site");
        if (from != null && !from.equals("http://" + origin) || fetch != null && !List.of("same-origin", "none").contains(fetch)) {
            return Optional.of(403);
        }
        if (!List.of("GET", "HEAD").contains(exchange.getRequestMethod())) {
            return Optional.of(405);
        }
        String path = exchange.getRequestURI().getPath();
        String given = path == null || path.length() < token.length() + 2 ? "" : path.substring(0, token.length() + 2);
        return MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), ("/" + token + "/").getBytes(StandardCharsets.UTF_8))
                ? Optional.empty() : Optional.of(403);
    }

    private static void headers(HttpExchange exchange) {
        var headers = exchange.getResponseHeaders();
        headers.set("Cache-Control", "no-store");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Content-Security-Policy", "frame-ancestors 'none'");
    }

    private void answer(HttpExchange exchange, String path) throws IOException {
        watch.look();
        if (path.isEmpty()) {
            send(exchange, 200, SiteFile.text("index.html", Listing.of(site)));
        } else if (path.endsWith(".html")) {
            Optional<SiteFile> page = site.page(path).file();
            send(exchange, page.isPresent() ? 200 : 404, page.orElseGet(() -> SiteFile.text("none.html",
                    Listing.none("/" + token + "/" + site.sites().get(0) + "/assets/" + script(PreviewedSite.Shown.NONE)))));
        } else {
            Optional<SiteFile> file = own(path).or(() -> site.file(path));
            if (file.isPresent()) {
                send(exchange, 200, file.get());
            } else {
                exchange.sendResponseHeaders(404, -1);
            }
        }
    }

    private static void send(HttpExchange exchange, int status, SiteFile file) throws IOException {
        String ending = file.path().substring(file.path().lastIndexOf('.') + 1);
        exchange.getResponseHeaders().set("Content-Type", TYPES.getOrDefault(ending, "application/octet-stream"));
        boolean head = exchange.getRequestMethod().equals("HEAD");
        exchange.sendResponseHeaders(status, head ? -1 : file.bytes().length);
        if (!head) {
            exchange.getResponseBody().write(file.bytes());
        }
    }

    /** The script and style of the preview itself, which lie beside those of the site. */
    private Optional<SiteFile> own(String path) {
        return site.sites().stream().flatMap(name -> List.of(SCRIPT, "preview.css").stream()
                .filter(file -> path.equals(name + "/assets/" + file))).findFirst()
                .map(file -> SiteFile.text(file, Listing.packed(file)));
    }

    private static Map<String, String> query(HttpExchange exchange) {
        Map<String, String> asked = new HashMap<>();
        String query = exchange.getRequestURI().getRawQuery();
        for (String pair : query == null ? new String[0] : query.split("&")) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                asked.put(pair.substring(0, equals), URLDecoder.decode(pair.substring(equals + 1), StandardCharsets.UTF_8));
            }
        }
        return asked;
    }
}

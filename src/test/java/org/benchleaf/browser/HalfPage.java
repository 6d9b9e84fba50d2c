package org.benchleaf.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** A server of a site that keeps the second half of one page back until it is asked for a picture that is not there. */
final class HalfPage implements AutoCloseable {

    private static final String REST = "/rest-of-the-page.png";
    private static final int LONGEST = 60;

    private final Path root;
    private final String page;
    private final CountDownLatch asked = new CountDownLatch(1);
    private final ExecutorService threads = Executors.newFixedThreadPool(4);
    private final HttpServer server;

    HalfPage(Path root, String page) throws IOException {
        this.root = root;
        this.page = "/" + page;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(threads);
        server.createContext("/", this::answer);
        server.start();
    }

    String address() {
        return "http://localhost:" + server.getAddress().getPort() + page;
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        Path file = root.resolve(path.substring(1));
        try (exchange) {
            if (path.equals(REST)) {
                asked.countDown();
            }
            if (!Files.isRegularFile(file)) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            byte[] bytes = Files.readAllBytes(file);
            exchange.getResponseHeaders().set("Content-Type", path.endsWith(".html") ? "text/html"
                    : path.endsWith(".css") ? "text/css" : path.endsWith(".js") ? "text/javascript" : "application/octet-stream");
            exchange.sendResponseHeaders(200, bytes.length);
            send(exchange.getResponseBody(), bytes, path.equals(page) ? bytes.length / 2 : bytes.length);
        }
    }

    private void send(OutputStream out, byte[] bytes, int first) throws IOException {
        out.write(bytes, 0, first);
        out.flush();
        try {
            if (first < bytes.length && !asked.await(LONGEST, TimeUnit.SECONDS)) {
                throw new IOException("the page never asked for its second half");
            }
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
        out.write(bytes, first, bytes.length - first);
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}

package org.benchleaf.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;

/** A server on this machine that serves files below a path and keeps which were asked for. It can be stopped and started again. */
final class LocalServer implements AutoCloseable {

    private static final int SIDE_BY_SIDE = 4;

    private final String below;
    private final Files files;
    private final Queue<String> asked = new ConcurrentLinkedQueue<>();
    private HttpServer server;
    private int port;

    /** The bytes of a file by its path; empty where there is no such file. */
    @FunctionalInterface
    interface Files {
        Optional<byte[]> bytes(String path) throws IOException;
    }

    /** A server of files below a path that begins and ends with a slash; it runs at once, on any free port. */
    LocalServer(String below, Files files) throws IOException {
        this.below = below;
        this.files = files;
        start();
    }

    /** Runs it again, on the port that it had. */
    void start() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        port = server.getAddress().getPort();
        server.setExecutor(Executors.newFixedThreadPool(SIDE_BY_SIDE, work -> {
            Thread thread = new Thread(work);
            thread.setDaemon(true);
            return thread;
        }));
        server.createContext(below, this::answer);
        server.start();
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath().substring(below.length());
        asked.add(path);
        try (exchange) {
            Optional<byte[]> bytes = files.bytes(path);
            if (bytes.isEmpty()) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            exchange.getResponseHeaders().set("Content-Type", type(path));
            exchange.sendResponseHeaders(200, bytes.get().length);
            exchange.getResponseBody().write(bytes.get());
        }
    }

    private static String type(String path) {
        return path.endsWith(".js") ? "text/javascript" : path.endsWith(".css") ? "text/css" : path.endsWith(".svg")
                ? "image/svg+xml" : path.endsWith(".jpg") ? "image/jpeg" : path.endsWith(".webmanifest")
                ? "application/manifest+json" : path.isEmpty() || path.endsWith(".html") ? "text/html" : "text/plain";
    }

    /** The whole address of a path. */
    String address(String path) {
        return "http://localhost:" + port + below + path;
    }

    /** Every path that was asked for since the queue was last cleared, found or not. */
    Queue<String> asked() {
        return asked;
    }

    @Override
    public void close() {
        server.stop(0);
    }
}

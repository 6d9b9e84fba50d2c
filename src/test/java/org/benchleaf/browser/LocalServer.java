package org.benchleaf.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** A server on this machine that serves files below a path and keeps which were asked for. It can be stopped and started again. */
final class LocalServer implements AutoCloseable {

    private static final int SIDE_BY_SIDE = 4;
    /** Seconds that a file waits for its rest to be asked for. */
    private static final int LONGEST = 60;

    private final String below;
    private final Files files;
    private final Queue<String> asked = new ConcurrentLinkedQueue<>();
    private final Map<String, Cut> cuts = new ConcurrentHashMap<>();
    private HttpServer server;
    private int port;

    /** The bytes of a file by its path; empty where there is no such file. */
    @FunctionalInterface
    interface Files {
        Optional<byte[]> bytes(String path) throws IOException;
    }

    /** A file of which bytes are held back until the path of the sign is asked for. */
    private record Cut(int at, String sign, CountDownLatch seen) {}

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

    /** Sends the bytes of a file from a place on only when the path of a sign, which may lead to no file, was asked for. */
    void holdBack(String path, int from, String sign) {
        cuts.put(path, new Cut(from, sign, new CountDownLatch(1)));
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath().substring(below.length());
        asked.add(path);
        cuts.values().stream().filter(cut -> cut.sign().equals(path)).forEach(cut -> cut.seen().countDown());
        try (exchange) {
            Optional<byte[]> bytes = files.bytes(path);
            if (bytes.isEmpty()) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            exchange.getResponseHeaders().set("Content-Type", type(path));
            exchange.sendResponseHeaders(200, bytes.get().length);
            send(exchange.getResponseBody(), bytes.get(), Optional.ofNullable(cuts.get(path)));
        }
    }

    private static void send(OutputStream out, byte[] bytes, Optional<Cut> cut) throws IOException {
        int first = cut.map(Cut::at).orElse(bytes.length);
        out.write(bytes, 0, first);
        out.flush();
        try {
            if (cut.isPresent() && !cut.get().seen().await(LONGEST, TimeUnit.SECONDS)) {
                throw new IOException("nobody asked for " + cut.get().sign());
            }
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
        out.write(bytes, first, bytes.length - first);
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

package org.benchleaf.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Asks a preview by HTTP/1.1 (RFC 9112), with whatever header a test wants to send. */
public final class PreviewClient {

    private static final int LONGEST_WAIT = 60_000;

    private final URI address;

    /** Asks the preview at that address. */
    public PreviewClient(String address) {
        this.address = URI.create(address);
    }

    /** An answer. */
    public record Answer(int status, String head, byte[] body) {

        public String text() {
            return new String(body, StandardCharsets.UTF_8);
        }
    }

    /** What stands below a page. */
    public record Strip(List<String> notices, List<String> told) {
    }

    public String token() {
        return address.getPath();
    }

    public Answer get(String path) throws IOException {
        return ask("GET", token() + path, "X-Nothing: 1");
    }

    public Answer ask(String method, String path, String header) throws IOException {
        try (Socket socket = asked(method, path, header.replace("PORT", String.valueOf(address.getPort())))) {
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            socket.getInputStream().transferTo(all);
            String answer = all.toString(StandardCharsets.ISO_8859_1);
            int end = answer.indexOf("\r\n\r\n");
            return new Answer(Integer.parseInt(answer.split(" ")[1]), answer.substring(0, end),
                    answer.substring(end + 4).getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    private Socket asked(String method, String path, String header) throws IOException {
        Socket socket = new Socket(address.getHost(), address.getPort());
        socket.setSoTimeout(LONGEST_WAIT);
        String host = header.startsWith("Host:") ? "" : "Host: " + address.getHost() + ":" + address.getPort() + "\r\n";
        socket.getOutputStream().write((method + " " + path + " HTTP/1.1\r\n" + host + header
                + "\r\nContent-Length: 0\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
        return socket;
    }

    /** Listens to what a page of a version is told. */
    public Events events(String page, String version) throws IOException {
        return new Events(asked("GET", token() + "events?page=" + URLEncoder.encode(page, StandardCharsets.UTF_8)
                + "&version=" + version, "Accept: text/event-stream"));
    }

    /** What an open page is told. */
    public static final class Events implements Closeable {

        private final Socket socket;
        private final BufferedReader lines;

        private Events(Socket socket) throws IOException {
            this.socket = socket;
            InputStream in = socket.getInputStream();
            this.lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        }

        /** The data of the next event of a name. */
        public String next(String name) throws IOException {
            while (true) {
                List<String> event = event();
                if (event.get(0).equals(name)) {
                    return event.get(1);
                }
            }
        }

        /** The next strip, once it is whole. */
        public Strip strip() throws IOException {
            next("begin");
            Strip strip = new Strip(new ArrayList<>(), new ArrayList<>());
            for (List<String> event = event(); !event.get(0).equals("end"); event = event()) {
                (event.get(0).equals("notice") ? strip.notices() : strip.told()).add(event.get(1));
            }
            return strip;
        }

        /** Name and data of the next event. */
        private List<String> event() throws IOException {
            long latest = System.nanoTime() + LONGEST_WAIT * 1_000_000L;
            String name = "";
            StringBuilder data = new StringBuilder();
            for (String line = lines.readLine(); line != null && System.nanoTime() < latest; line = lines.readLine()) {
                if (line.startsWith("event: ")) {
                    name = line.substring("event: ".length());
                } else if (line.startsWith("data:")) {
                    data.append(data.length() == 0 ? "" : "\n").append(line.substring("data:".length()).strip());
                } else if (line.isEmpty() && !name.isEmpty()) {
                    return List.of(name, data.toString());
                }
            }
            throw new IOException("nothing more was told");
        }

        @Override
        public void close() throws IOException {
            socket.close();
        }
    }
}

package org.benchleaf.preview;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;

/** What is told to one open page, as server-sent events (HTML Living Standard, section 9.2). */
final class EventStream {

    /** In milliseconds; only writing shows whether the reader is still there. */
    static final long LONGEST_SILENCE = 15_000;

    private final PreviewedSite site;
    private final HttpExchange exchange;
    private final String page;
    private final String version;
    private String told = "";
    private volatile boolean closed;

    EventStream(PreviewedSite site, HttpExchange exchange, String page, String version) {
        this.site = site;
        this.exchange = exchange;
        this.page = page;
        this.version = version;
    }

    void open() throws IOException {
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        send(": open\n\n");
    }

    /**
     * Tells what is new: that the page is another one, and else what is to be told beside it.
     *
     * @return whether there may be more to tell; a page that is another one is loaded again, and asks again
     */
    boolean tell() throws IOException {
        if (!version.equals(String.valueOf(site.page(page).version()))) {
            send(event("page", page));
            return false;
        }
        String now = text(site.strip(page));
        send(now.equals(told) ? ": still here\n\n" : now);
        told = now;
        return true;
    }

    private static String text(PreviewedSite.Strip strip) {
        StringBuilder text = new StringBuilder(event("begin", ""));
        strip.notices().forEach(notice -> text.append(event("notice", notice)));
        for (Message message : strip.messages()) {
            text.append(event("told-" + message.severity().word(), MessageText.of(message)));
        }
        return text.append(event("end", "")).toString();
    }

    private static String event(String name, String data) {
        StringBuilder event = new StringBuilder("event: ").append(name).append('\n');
        data.lines().forEach(line -> event.append("data: ").append(line).append('\n'));
        return event.append(data.isEmpty() ? "data:\n\n" : "\n").toString();
    }

    private void send(String text) throws IOException {
        OutputStream out = exchange.getResponseBody();
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** Ends with the next thing that would be told. */
    void close() {
        closed = true;
    }

    boolean isClosed() {
        return closed;
    }
}

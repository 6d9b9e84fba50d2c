package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Closeable;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.benchleaf.command.PreviewClient;
import org.benchleaf.command.PublishCommand;
import org.benchleaf.command.TemplateChoice;
import org.benchleaf.preview.PreviewServer;
import picocli.CommandLine;

/** A small content folder in a preview that runs, and what tests ask of it. */
final class ServedContent implements Closeable {

    static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    static final Pattern VERSION = Pattern.compile("preview\\.js\\?version=(\\d+)");
    private static final Path SOUND = Path.of("src/test/resources/sound/base");
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

    private final Path content;
    private final PreviewServer server;
    private final List<PreviewClient.Events> open = new ArrayList<>();

    private ServedContent(Path content) throws IOException {
        this.content = content;
        WarmStudio studio = new WarmStudio(content, TemplateChoice.of(content, Optional.empty()), () -> DAY);
        this.server = PreviewServer.start(new StudioPreview(content, studio, Clock.systemUTC()), 0);
    }

    /** The sound content with a class that is planned, copied into a folder and served. */
    static ServedContent in(Path folder) throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
        Files.writeString(content.resolve("classes/spring.yaml"), CLASS_DAY, StandardOpenOption.APPEND);
        return of(content);
    }

    /** Content as it is, served. */
    static ServedContent of(Path content) throws IOException {
        return new ServedContent(content);
    }

    Path content() {
        return content;
    }

    String address() {
        return server.address();
    }

    PreviewClient client() {
        return new PreviewClient(address());
    }

    PreviewClient.Events events(String page, String version) throws IOException {
        PreviewClient.Events events = client().events(page, version);
        open.add(events);
        return events;
    }

    static String version(String page) {
        Matcher version = VERSION.matcher(page);
        assertThat(version.find()).isTrue();
        return version.group(1);
    }

    int publish(Path site) throws IOException {
        Files.createDirectories(site.getParent());
        StringWriter told = new StringWriter();
        return new CommandLine(new PublishCommand()).setErr(new PrintWriter(told)).setOut(new PrintWriter(told))
                .execute("--content", content.toString(), "--site", site.toString(), "--on", DAY.toString());
    }

    /** Every file below a folder, by its path, its bytes seen as letters. */
    static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString().replace('\\', '/'), file.toString().endsWith(".html")
                        ? Files.readString(file) : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    @Override
    public void close() throws IOException {
        for (PreviewClient.Events each : open) {
            each.close();
        }
        server.close();
    }
}

package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A studio that is translated into French, and what commands say of it. */
abstract class TranslatingStudio {

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    @TempDir
    Path folder;
    Path content;

    @BeforeEach
    void a_studio() throws IOException {
        content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        change(content.resolve("studio.yaml"), "languages: [en, es]", "languages: [en, es, fr]");
    }

    final int run(Object command, String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return new CommandLine(command).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(arguments);
    }

    /** Runs a command on the content, which must end well, and returns all that it says. */
    final String done(Object command, String... arguments) {
        String[] all = Stream.concat(Stream.of(arguments), Stream.of("--content", content.toString())).toArray(String[]::new);
        assertThat(run(command, all)).as(this::said).isZero();
        return said();
    }

    final String said() {
        return err + "\n" + out;
    }

    final String check() {
        return done(new CheckCommand());
    }

    static void change(Path file, String from, String to) throws IOException {
        String before = Files.readString(file);
        assertThat(before).contains(from);
        Files.writeString(file, before.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
    }
}

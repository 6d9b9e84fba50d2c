package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.Clearance;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Catalogue;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageId;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every message about the content has a faulty folder that brings it out and nothing else. */
class FaultyContentTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final Path FAULTY = Path.of("src/test/resources/faulty");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @TempDir
    private Path folder;

    @Test
    void the_sound_content_brings_out_no_message() {
        assertThat(told(SOUND).stream().map(MessageText::of)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void a_fault_brings_out_its_own_message_alone(String code) {
        Path content = ChangedContent.of(SOUND, FAULTY.resolve(code).resolve("change.txt"), folder.resolve("content"));
        List<Message> told = told(content);
        assertThat(told.stream().map(Message::code).distinct())
                .as(() -> String.join("\n", told.stream().map(MessageText::of).toList())).containsExactly(code);
    }

    @Test
    void every_message_about_content_has_a_fault() {
        Set<String> without = new TreeSet<>();
        Catalogue.all().stream().map(MessageId::code).filter(code -> code.matches("(READ|FORM|RULES|FIG|CLAIM|CONS|PICT-01)-?.*"))
                .forEach(without::add);
        codes().forEach(without::remove);
        assertThat(without).isEmpty();
    }

    @Test
    void every_fault_has_a_message() {
        List<String> known = Catalogue.all().stream().map(MessageId::code).toList();
        assertThat(codes()).allMatch(code -> known.contains(code) || code.startsWith("RULE-"));
    }

    static Stream<String> codes() {
        try (Stream<Path> folders = Files.list(FAULTY)) {
            return folders.map(path -> path.getFileName().toString()).sorted().toList().stream();
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    /** Everything that is said about a content folder before anything is published. */
    static List<Message> told(Path content) {
        Messages messages = new Messages();
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        messages.addAll(library.messages());
        for (Path each : CaseReader.folders(content)) {
            Checked checked = CaseChecker.check(CaseReader.read(content, each), library.library(), TODAY);
            messages.addAll(checked.messages());
            if (!library.messages().hasErrors() && checked.treatment().isPresent()) {
                Clearance.on(TODAY, checked.treatment().get()).told().forEach(messages::add);
                messages.addAll(Deriver.derive(checked.treatment().get(), checked.findings(), library.library())
                        .messages());
            }
        }
        return messages.all();
    }
}

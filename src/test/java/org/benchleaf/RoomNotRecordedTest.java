package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.Severity;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a room of which something is not recorded no vapour is worked out, and that is told; nothing stands in its place. */
class RoomNotRecordedTest {

    @TempDir
    private Path folder;

    private int copies;

    private Derived derived(String volume, String changes, String temperature) throws IOException {
        Path content = folder.resolve(String.valueOf(++copies));
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Path studio = content.resolve("studio.yaml");
        Files.writeString(studio, Files.readString(studio).replaceFirst("(?m)^room: .*$", "room: {volume: " + volume + ", air changes: "
                + changes + ", temperature: " + temperature + "}"));
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        assertThat(library.messages().all()).filteredOn(message -> message.severity() == Severity.ERROR).isEmpty();
        Checked checked = WholeLine.checked(content, content.resolve("cases/tide"), library);
        return new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
    }

    private static List<String> ofRoom(Derived derived) {
        return derived.messages().all().stream().filter(message -> message.code().equals("HAZ-025")).map(Message::what).toList();
    }

    @Test
    void a_volume_and_a_temperature_that_nobody_recorded_leave_the_vapour_open() throws IOException {
        assertThat(derived("60 m³", "4 /h", "20 °C").worked().figures()).containsKey("relax.vapour");
        Derived roomless = derived("not known", "4 /h", "20 °C");
        assertThat(roomless.worked().figures()).doesNotContainKey("relax.vapour");
        assertThat(ofRoom(roomless)).singleElement().asString().contains("because of the volume of the room, which is not recorded");
        assertThat(ofRoom(derived("60 m³", "4 /h", "not known"))).singleElement().asString().contains("the temperature of the room");
    }

    /** Without airing all of it stays in the air, so that no less is told than with it. */
    @Test
    void without_its_changes_of_air_a_room_counts_as_closed() throws IOException {
        assertThat(derived("60 m³", "not known", "20 °C").worked().figures().get("relax.vapour").value().high())
                .isGreaterThan(derived("60 m³", "4 /h", "20 °C").worked().figures().get("relax.vapour").value().high());
    }
}

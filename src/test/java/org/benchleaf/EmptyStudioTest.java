package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who begins with nothing is led on: from no folder to a studio of one file, and from there to a first draft. */
class EmptyStudioTest {

    private static final Pattern STUDIO_OF_THE_README = Pattern.compile("```yaml\\n( *name: My studio\\n.*?)```", Pattern.DOTALL);

    @TempDir
    private Path outside;
    private Path folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectory(outside.resolve("studio"));
    }

    @Test
    void without_a_folder_each_command_says_what_to_make() {
        for (String command : new String[] {"check", "publish", "draft first", "figures first", "translation first fr", "plan spring",
                "issue spring"}) {
            assertThat(told(command, folder.resolve("nowhere"))).as(command).contains("no content folder", "studio.yaml");
        }
    }

    @Test
    void a_folder_without_a_studio_leads_to_its_file() {
        assertThat(told("check", folder)).contains("READ-002", "Write it with 'name:'");
    }

    @Test
    void a_studio_of_its_name_alone_is_asked_for_each_key_with_a_line_to_copy() throws IOException {
        Files.writeString(folder.resolve("studio.yaml"), "name: My studio\n");
        assertThat(told("check", folder)).contains("Add 'hours:', for example 'hours: ", "Add 'room:', for example 'room: ")
                .contains("There is no case yet: 'benchleaf draft NAME --content " + folder + "' begins one.");
    }

    @Test
    void the_studio_of_the_readme_is_whole_and_a_draft_follows() throws IOException {
        Matcher studio = STUDIO_OF_THE_README.matcher(Files.readString(Path.of("README.md")));
        assertThat(studio.find()).isTrue();
        Files.writeString(folder.resolve("studio.yaml"), studio.group(1).lines().map(String::strip).collect(Collectors.joining("\n")));
        assertThat(told("check", folder)).contains("0 cases checked: no errors, no warnings, no advice.", "There is no case yet");
        assertThat(told("publish --site " + outside.resolve("site"), folder)).contains("SITE-016", "'benchleaf draft NAME' begins");
        assertThat(told("figures first", folder)).contains("there is none yet, and 'benchleaf draft first' begins it");
        assertThat(told("draft first", folder)).contains("Written:", "still open");
        assertThat(told("check", folder)).contains("1 case checked: no errors").doesNotContain("There is no case yet");
    }

    private static String told(String command, Path content) {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        Main.run(out, out, (command + " --content " + content).split(" "));
        return told.toString();
    }
}

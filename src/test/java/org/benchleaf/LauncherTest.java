package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The script for Windows, which is run on no machine of the build, hands Java the same options as the one that is. */
class LauncherTest {

    private static final Path LAUNCHERS = Path.of("src/launcher");
    private static final Pattern OPTION = Pattern.compile("\"?(-[A-Z]\\S*|-jar \\S+)\"?(?=\\s)");

    @Test
    void both_scripts_hand_java_the_same_options_in_the_same_order() throws IOException {
        List<String> shell = options(Files.readString(LAUNCHERS.resolve("benchleaf")), "exec \"$java\"");
        assertThat(shell).hasSizeGreaterThan(4).contains("-Xshare:auto", "-jar HOME/lib/benchleaf.jar");
        assertThat(options(Files.readString(LAUNCHERS.resolve("benchleaf.cmd")), "\"%benchleaf_java%\"")).isEqualTo(shell);
    }

    /** Microsoft, "Command-line reference": {@code %*} is every argument, {@code exit /b} ends the script alone. */
    @Test
    void the_script_for_windows_hands_on_what_was_typed_and_how_it_ended() throws IOException {
        String script = Files.readString(LAUNCHERS.resolve("benchleaf.cmd"));
        assertThat(script).startsWith("@echo off").contains("setlocal").containsSubsequence("benchleaf.jar\" %*", "exit /b %errorlevel%");
        assertThat(script.lines().filter(line -> line.contains("=%") && line.startsWith("set ")))
                .allMatch(line -> line.matches("set \".*\""));
    }

    @Test
    void without_java_both_say_the_same_and_end_alike() throws IOException {
        String shell = Files.readString(LAUNCHERS.resolve("benchleaf"));
        String told = shell.lines().filter(line -> line.contains("there is no Java")).findFirst().orElseThrow()
                .replaceAll(".*\"(.*)\".*", "$1");
        assertThat(shell).containsSubsequence(told, "exit 3");
        assertThat(Files.readString(LAUNCHERS.resolve("benchleaf.cmd"))).containsSubsequence(told, "exit /b 3");
    }

    private static List<String> options(String script, String start) {
        String call = script.substring(script.indexOf(start) + start.length()).replace("\\\n", " ").replace("$home", "HOME")
                .replace("%benchleaf_home%", "HOME").replace('\\', '/').replace("\"", "");
        return OPTION.matcher(call + " ").results().map(MatchResult::group).map(String::strip).toList();
    }
}

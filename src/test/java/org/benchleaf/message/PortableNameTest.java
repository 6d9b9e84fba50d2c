package org.benchleaf.message;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names after Microsoft, "Naming Files, Paths, and Namespaces", section "Naming Conventions". */
class PortableNameTest {

    @ParameterizedTest
    @ValueSource(strings = {"CON", "PRN", "AUX", "NUL", "COM1", "COM9", "LPT1", "LPT9", "COM¹", "LPT³", "NUL.txt", "NUL.tar.gz",
        "nul.csv", "Aux.jpg", "con .md"})
    void a_name_of_a_device_is_refused_with_and_without_an_ending(String name) {
        assertThat(PortableName.fault(name)).contains("Windows keeps it for a device");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a<b", "a>b", "a:b", "a\"b", "a/b", "a\\b", "a|b", "a?b", "a*b", "a\u0000b", "a\nb", "a\u001Fb"})
    void a_reserved_or_control_character_is_refused(String name) {
        assertThat(PortableName.fault(name)).contains("it holds a sign that Windows keeps for itself");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.", "a ", "wet sheet.jpg ", "...", " a"})
    void a_full_stop_or_blank_at_an_end_is_refused(String name) {
        assertThat(PortableName.fault(name)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {".temp", "console.md", "common.csv", "com10.csv", "lpt.csv", "aux-light.jpg", "50 % RH, #2 ($).jpg",
        "Übersicht.jpg", "紙.jpg"})
    void what_only_looks_like_it_may_stand(String name) {
        assertThat(PortableName.fault(name)).isEmpty();
    }

    /** Common practice, no source: a path of 260 characters leaves so much for one name. */
    @Test
    void a_hundred_characters_are_the_most() {
        assertThat(PortableName.fault("a".repeat(100))).isEmpty();
        assertThat(PortableName.fault("a".repeat(101))).contains("it has 101 characters, more than 100");
    }

    @Test
    void names_that_differ_in_capitals_or_in_composed_letters_alone_cannot_stand_beside_each_other() {
        assertThat(PortableName.fault("Waves.csv", "waves.csv")).isPresent();
        assertThat(PortableName.fault("e\u0301tat.csv", "\u00C9tat.csv")).isPresent();
        assertThat(PortableName.fault("waves.csv", "waves.csv")).isEmpty();
        assertThat(PortableName.fault("waves.csv", "wave.csv")).isEmpty();
    }
}

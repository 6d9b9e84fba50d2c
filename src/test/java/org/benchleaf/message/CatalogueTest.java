package org.benchleaf.message;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CatalogueTest {

    @ParameterizedTest
    @MethodSource("org.benchleaf.message.Catalogue#all")
    void a_message_has_a_code_and_says_what_why_and_what_to_do(Message.Id id) {
        assertThat(id.code()).matches("[A-Z]+-\\d{3}");
        assertThat(id.what()).isNotBlank();
        assertThat(id.why()).isNotBlank();
        assertThat(id.fix()).isNotBlank();
        assertThat(id.severity()).isNotNull();
    }

    @ParameterizedTest
    @MethodSource("org.benchleaf.message.Catalogue#all")
    void a_message_never_promises_that_something_is_safe(Message.Id id) {
        assertThat(id.what() + " " + id.why() + " " + id.fix()).doesNotContainPattern("(?i)\\bsafe\\b");
    }

    @Test
    void every_list_of_messages_is_in_the_catalogue() {
        List<String> lists = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.benchleaf").stream()
                .filter(type -> type.isEnum() && type.isAssignableTo(Message.Id.class)).map(JavaClass::getName).toList();
        assertThat(Catalogue.all().stream().map(id -> id.getClass().getName()).distinct())
                .containsExactlyInAnyOrderElementsOf(lists);
    }

    @Test
    void no_two_messages_share_a_code_or_say_the_same() {
        Map<String, Message.Id> codes = new HashMap<>();
        Map<String, Message.Id> words = new HashMap<>();
        for (Message.Id id : Catalogue.all()) {
            assertThat(codes.put(id.code(), id)).as(id.code()).isNull();
            assertThat(words.put(id.what() + id.fix(), id)).as(id.what()).isNull();
        }
    }
}

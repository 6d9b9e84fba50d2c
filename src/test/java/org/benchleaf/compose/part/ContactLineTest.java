package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.text.Inline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ContactLineTest {

    private static List<String> mail(String line) {
        return ContactLine.of(line).parts().stream().filter(Inline.Hyperlink.class::isInstance).map(Inline.Hyperlink.class::cast)
                .map(Inline.Hyperlink::href).toList();
    }

    /** RFC 6068, section 6.1, has the form "mailto:chris@example.com". */
    @ParameterizedTest
    @CsvSource({"E-mail: chris@example.com, mailto:chris@example.com", "Write to <chris@example.com>., mailto:chris@example.com",
        "infobot+desk@paper-studio.example (any day), mailto:infobot+desk@paper-studio.example"})
    void a_mail_address_is_a_link_and_every_letter_of_the_line_stays(String line, String address) {
        assertThat(mail(line)).containsExactly(address);
        assertThat(ContactLine.of(line).plain()).isEqualTo(line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"By appointment, Monday to Friday", "a@b", "two@at@example.com", "@desk", "what?subject=x@example.com", ""})
    void what_is_no_address_is_no_link(String line) {
        assertThat(mail(line)).isEmpty();
        assertThat(ContactLine.of(line).plain()).isEqualTo(line);
    }

    @Test
    void two_addresses_are_two_links() {
        assertThat(mail("a@example.com or b@example.com")).containsExactly("mailto:a@example.com", "mailto:b@example.com");
    }
}

package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Story;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Little text that would become a very large page. */
class StoryLimitsTest {

    @ParameterizedTest
    @CsvSource({"10, 1", "400, 100", "15000, 60"})
    void a_long_address_defined_once_may_be_used_while_the_page_stays_readable(int uses, int length) {
        String text = "See [a] now.\n\n".repeat(uses) + "[a]: https://example.org/" + "x".repeat(length) + "\n";
        Messages messages = new Messages();
        Story story = read(text, messages);
        boolean fits = (long) uses * (length + 20) <= 200_000;
        assertThat(messages.all().stream().map(Message::code)).containsExactlyElementsOf(
                fits ? java.util.List.of() : java.util.List.of("READ-022"));
        assertThat(story.sections().isEmpty()).isEqualTo(!fits);
    }

    @ParameterizedTest
    @CsvSource({"900, 0", "1100, 1"})
    void figures_cited_by_the_thousand_are_refused(int citations, int told) {
        Messages messages = new Messages();
        read("One {wash.volume} more.\n\n".repeat(citations), messages);
        assertThat(messages.all()).hasSize(told).allMatch(message -> message.code().equals("READ-022"));
    }

    private static Story read(String text, Messages messages) {
        return StoryReader.read(new Lines(new SourceText("case.md", text), text), text, 0, messages);
    }
}

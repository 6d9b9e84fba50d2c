package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.classes.IssuedPapers;
import org.benchleaf.message.Place;
import org.benchleaf.model.ClassPapers;
import org.junit.jupiter.api.Test;

/** An issue as it is kept; how it is read again stands in {@code IssuesFormTest}. */
class IssueTextTest {

    @Test
    void an_amount_and_its_batches_are_two_values() {
        assertThat(kept(new ClassPapers.Amount("5.8 L", 16))).contains("\n      bath: {each: \"5.8 L\", batches: 16}\n");
        assertThat(kept(new ClassPapers.Amount("5.8 L", 1))).contains("\n      bath: \"5.8 L\"\n");
    }

    private static String kept(ClassPapers.Amount amount) {
        ClassPapers.Issue issue = new ClassPapers.Issue(2, LocalDate.of(2026, 3, 2), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Place.file("classes/spring.yaml"));
        return IssueText.of(issue, new IssuedPapers("941a863fa6d3", Map.of("bath", amount), Map.of()));
    }
}

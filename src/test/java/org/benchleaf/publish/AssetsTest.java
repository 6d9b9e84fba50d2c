package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a script is spared on its way to a phone, and what of it stays. */
class AssetsTest {

    @Test
    void a_script_is_published_without_the_comments_that_have_lines_of_their_own_and_without_the_room_before_its_lines() {
        assertThat(Assets.bare("/* What it\n   does * all. */\nvar a = 1;\n  /* More. */\n  var b = \"/* no */\"; /* stays */\n"))
                .isEqualTo("var a = 1;\nvar b = \"/* no */\"; /* stays */\n");
        assertThat(Assets.bare("/* one */ var a;\n/* two */\nvar b;\n")).isEqualTo("/* one */ var a;\nvar b;\n");
    }

    @Test
    void a_script_whose_texts_may_run_over_lines_stays_as_it_is() {
        assertThat(Assets.bare("var a = `\n  one`;\n")).isEqualTo("var a = `\n  one`;\n");
    }
}

package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Blanks at both ends of a line and empty lines are nothing to a browser, but in {@code pre} (HTML Living Standard, 4.4.3; CSS Text 3,
 * section 4). However the text is cut when it comes, the page is the same.
 */
class PageTextTest {

    private static final String COMES = "<p>\n\n   a b  \r\n\t<i>c</i>\n<pre>  one\n\n  two </pre>\n  d\n<pre>x</pre> y\n   e";
    private static final String KEPT = "<p>\na b\n<i>c</i>\n<pre>  one\n\n  two </pre>\nd\n<pre>x</pre> y\ne\n";

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 1000})
    void empty_lines_and_indents_are_left_out_but_where_they_are_text(int letters) throws IOException {
        PageText page = new PageText();
        for (int at = 0; at < COMES.length(); at += letters) {
            page.write(COMES.substring(at, Math.min(COMES.length(), at + letters)));
        }
        assertThat(page.whole()).isEqualTo(KEPT);
    }

    @Test
    void empty_lines_without_end_are_stopped() {
        PageText page = new PageText();
        assertThatThrownBy(() -> {
            for (int at = 0; at < 20_000_000; at++) {
                page.write("\n");
            }
        }).isInstanceOf(IOException.class).hasMessageContaining("million letters");
    }

    @Test
    void a_tag_is_told_from_words() throws IOException {
        PageText page = new PageText();
        page.write("<p class=");
        assertThat(page.isInRunningText()).isFalse();
        page.write("\"x\">\n   words");
        assertThat(page.isInRunningText()).isTrue();
    }
}

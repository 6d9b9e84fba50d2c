package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Results and messages sent into one file. */
class OrderedWriterTest {

    @Test
    void lines_come_out_in_the_order_in_which_they_were_written() {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        OrderedWriter.Pair pair = OrderedWriter.of(new OutputStreamWriter(file, StandardCharsets.UTF_8),
                new OutputStreamWriter(file, StandardCharsets.UTF_8));
        PrintWriter out = new PrintWriter(pair.first());
        PrintWriter err = new PrintWriter(pair.second());
        StringBuilder expected = new StringBuilder();
        for (int line = 0; line < 2000; line++) {
            String text = "line " + line + ", °" + "x".repeat(line % 97);
            (line % 7 == 0 ? out : err).println(text);
            expected.append(text).append(System.lineSeparator());
        }
        out.flush();
        err.flush();
        assertThat(file.toString(StandardCharsets.UTF_8)).isEqualTo(expected.toString());
    }
}

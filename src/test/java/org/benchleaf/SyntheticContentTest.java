package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.benchleaf.benchmark.SyntheticContent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The benchmark measures an edition, not a refusal: what it writes keeps the trade's rules. */
class SyntheticContentTest {

    @TempDir
    Path folder;

    @Test
    void synthetic_cases_can_be_published() throws IOException {
        SyntheticContent.write(Path.of("content"), folder, 4, 0);
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        int code = Main.run(out, out, "check", "--content", folder.toString());
        assertThat(code).as(said.toString()).isZero();
    }
}

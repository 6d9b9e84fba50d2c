package org.benchleaf.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.Rule;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;

/** Sends varied cases through reading and checking, as a run of the program does. */
final class Bench {

    static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    /** Sources that rules share with the methods of calculation. */
    static final Set<String> SHARED = Set.of("abbey-1995", "niosh-ethanol", "sugarman-vitale-1992");

    private static final Path CONTENT = Variation.FOLDER.resolve("content");

    final Library library;
    private final Path content;

    Bench(Path emptyFolder) {
        this.content = emptyFolder;
        copy(CONTENT.resolve("studio.yaml"), emptyFolder.resolve("studio.yaml"));
        copy(CONTENT.resolve("materials/all.yaml"), emptyFolder.resolve("materials/all.yaml"));
        this.library = LibraryChecker.check(LibraryReader.read(emptyFolder)).library();
    }

    Checked check(Map<String, Object> frontMatter) {
        Path folder = content.resolve("cases/varied");
        write(folder.resolve("case.md"), Variation.file(frontMatter));
        return CaseChecker.check(CaseReader.read(content, folder), library, TODAY, new Deriver(library)::ph);
    }

    /** The ids of the rules and cells that speak, each once. */
    static List<String> spoken(Checked checked) {
        return rules(checked).map(message -> message.code().substring("RULE-".length()).toLowerCase()).distinct().toList();
    }

    /** The same, without what other rules cannot tell as long as a step names no liquid, which a rule of its own asks for. */
    static List<String> spoken(Checked checked, Rule rule) {
        return rules(checked).filter(message -> !rule.id().equals("liquid-named") || !message.what().contains("the liquid is not given"))
                .map(message -> message.code().substring("RULE-".length()).toLowerCase()).distinct().toList();
    }

    /** What came of the rules that are not simply kept. */
    static List<Finding> notKept(Checked checked) {
        return checked.findings().stream().filter(finding -> finding.standing() != Finding.Standing.KEPT).toList();
    }

    /** What else stands in the way of the case: everything that is not the trade's rules speaking. */
    static List<Message> otherErrors(Checked checked) {
        return checked.messages().all().stream().filter(message -> !message.code().startsWith("RULE-"))
                .filter(message -> message.severity() == org.benchleaf.message.Severity.ERROR).toList();
    }

    static Stream<Message> rules(Checked checked) {
        return checked.messages().all().stream().filter(message -> message.code().startsWith("RULE-"));
    }

    private static void copy(Path from, Path to) {
        try {
            write(to, Files.readString(from));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static void write(Path to, String text) {
        try {
            Files.createDirectories(to.getParent());
            Files.writeString(to, text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}

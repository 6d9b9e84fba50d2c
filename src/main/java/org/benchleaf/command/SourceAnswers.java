package org.benchleaf.command;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.read.SourceLicenceReader;
import picocli.CommandLine.Option;

/** What is asked of the publication from which a case is retold, and what was answered. */
final class SourceAnswers {

    @Option(names = "--source", paramLabel = "KEY",
            description = "The publication from which the case is retold, by its key in sources.yaml; left out for a treatment"
                    + " of this studio.")
    private String of = "";

    @Option(names = "--source-licence", paramLabel = "LICENCE",
            description = "Under which licence that publication stands, such as CC-BY-4.0 or 'not known'.")
    private String licence = "";

    @Option(names = "--retold-by", paramLabel = "WHO", description = "Who retells it, as the pages may say it.")
    private String by = "";

    @Option(names = "--read", paramLabel = "TEXT", description = "What of the publication was read, such as 'the abstract'.")
    private String read = "";

    @Option(names = "--not-read", paramLabel = "TEXT", description = "What of it was not read; 'nothing' if all of it was.")
    private String notRead = "";

    /** Asks for what was not said yet; without a publication, for nothing more. */
    void ask(BufferedReader in, PrintWriter out) {
        String answer = Asking.one(of, "Is it retold from a publication? Then its key in sources.yaml. (no)", in, out);
        of = answer.equalsIgnoreCase("no") ? "" : answer;
        if (isRetold()) {
            licence = Asking.one(licence, "Under which licence does the publication stand? (CC-BY-4.0, or: not known)", in, out);
            ofLicence().ifPresent(out::println);
            by = Asking.one(by, "Who retells it, as the pages may say it? (a conservator of this studio)", in, out);
            read = Asking.one(read, "What of it was read? (the whole article and its tables)", in, out);
            notRead = Asking.one(notRead, "What of it was not read? (the supplement; or: nothing)", in, out);
        }
    }

    boolean isRetold() {
        return !of.isBlank();
    }

    /** The key of the publication, or what was said in its place. */
    String of() {
        return of;
    }

    String licence() {
        return licence;
    }

    /** What an author should know at once of the licence that was said: that it forbids a retelling, or may. */
    Optional<String> ofLicence() {
        if (!isRetold() || licence.isBlank()) {
            return Optional.empty();
        }
        return switch (SourceLicenceReader.of(licence, Place.file("")).terms()) {
            case ALLOWS -> Optional.empty();
            case FORBIDS -> Optional.of("The licence of the source, '" + licence + "', does not allow a retelling to be published"
                    + " (CONS-020). Ask whoever holds the rights before you write; without their written permission no page is published.");
            case NOT_KNOWN -> Optional.of("Whether the licence of the source, '" + licence + "', allows a retelling to be published is not"
                    + " known (CONS-021). Find out before you write; until then no page is published.");
        };
    }

    /** The answers by the keys of a case's source, as they stand in its file, without the key of the publication. */
    Map<String, String> rest() {
        Map<String, String> rest = new LinkedHashMap<>();
        rest.put("retold by", by);
        rest.put("read", read);
        rest.put("not read", notRead);
        return rest;
    }

    /** The option that says something of a publication where none is named. */
    Optional<String> withoutSource() {
        Map<String, String> said = new LinkedHashMap<>();
        said.put("--source-licence", licence);
        said.put("--retold-by", by);
        said.put("--read", read);
        said.put("--not-read", notRead);
        return isRetold() ? Optional.empty()
                : said.entrySet().stream().filter(option -> !option.getValue().isEmpty()).map(Map.Entry::getKey).findFirst();
    }
}

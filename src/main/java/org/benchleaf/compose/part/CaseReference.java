package org.benchleaf.compose.part;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.benchleaf.model.Citing;
import org.benchleaf.model.Source;
import org.benchleaf.model.Step;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Paths;

/**
 * What a reference to a case names.
 *
 * @param id of the case
 * @param title of the case
 * @param authors "Family, Given" for a person, another form for a body
 * @param publisher the studio
 * @param day of the newest version, else the last day on record; empty if there is none
 * @param version which changes with every number that was worked out
 * @param address of the case study on the web; empty if the studio states none
 * @param identifier persistent, as {@code doi:…} or {@code ark:…}
 * @param language BCP 47 tag
 * @param licence SPDX identifier
 * @param retoldFrom the publication from which the case is retold
 */
public record CaseReference(String id, String title, List<String> authors, String publisher, Optional<LocalDate> day, String version,
        Optional<String> address, Optional<String> identifier, String language, String licence,
        Optional<Source> retoldFrom) {

    /** As many letters as tell the states of one case apart (common practice, no source). */
    private static final int LETTERS = 8;
    private static final String DOI = "doi:";

    public CaseReference {
        authors = List.copyOf(authors);
    }

    public static CaseReference of(CaseDesk desk) {
        TreatmentCase treatment = desk.treatment();
        Studio studio = desk.library().studio();
        Citing citing = treatment.publication().citing();
        Optional<LocalDate> newest = citing.versions().stream().map(Citing.Version::on).max(Comparator.naturalOrder());
        return new CaseReference(treatment.id(), treatment.title(),
                citing.authors().isEmpty() ? List.of(studio.name()) : citing.authors(), studio.name(),
                newest.or(() -> treatment.steps().stream().map(Step::on).flatMap(Optional::stream).max(Comparator.naturalOrder())),
                version(desk), WebAddress.of(studio).map(web -> web.to(Paths.caseStudy(treatment.id()))),
                citing.identifier(), treatment.language(), treatment.publication().licence(),
                treatment.sources().retelling().map(retelling -> desk.library().sources().get(retelling.passage().source())));
    }

    /** The first letters of the SHA-256 of every figure at full precision, so that the same numbers have the same version. */
    private static String version(CaseDesk desk) {
        StringBuilder numbers = new StringBuilder();
        new TreeMap<>(desk.worked().figures()).forEach((figure, worked) -> numbers.append(figure).append('=')
                .append(worked.value().value()).append(' ').append(worked.value().low()).append(' ')
                .append(worked.value().high()).append(' ').append(worked.value().unit().symbol()).append('\n'));
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(numbers.toString().getBytes(StandardCharsets.UTF_8))).substring(0, LETTERS);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** The digital object identifier without its prefix, if that is what the case has. */
    public Optional<String> doi() {
        return identifier.filter(each -> each.startsWith(DOI)).map(each -> each.substring(DOI.length()));
    }

    /** The publication from which the case is retold, in full. */
    public Optional<String> basis() {
        return retoldFrom.map(Sources::reference);
    }

    /** Whether an author is a person, whose family name stands before a comma. */
    public static boolean isPerson(String author) {
        return author.indexOf(", ") > 0;
    }
}

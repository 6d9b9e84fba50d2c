package org.benchleaf.read;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.model.SourceLicence;

/** Reads what a licence means for a retelling from the program's table of licences. */
public final class SourceLicenceReader {

    private static final String TABLE = "/reference/source-licences.yaml";
    private static final List<Row> SHIPPED = OwnYaml.list(TABLE).stream().map(Row::of).toList();

    private record Row(List<String> licences, boolean allows, Optional<String> keep, List<String> onward) {

        static Row of(OwnYaml row) {
            row.text("key");
            row.text("source");
            Row read = new Row(row.texts("licences"), row.flag("retelling"), row.optionalText("keep"), row.texts("onward"));
            row.allRead();
            return read;
        }
    }

    private SourceLicenceReader() {
    }

    /** Every licence that is known, as an author writes it, in the order of the table. */
    public static List<SourceLicence> known() {
        return SHIPPED.stream().flatMap(row -> row.licences().stream()).map(words -> of(words, Place.file(TABLE))).toList();
    }

    /** What the words of an author about a licence mean; a licence that the table lacks is not known to allow anything. */
    public static SourceLicence of(String words, Place place) {
        return SHIPPED.stream().filter(row -> row.licences().contains(words)).findFirst()
                .map(row -> new SourceLicence(words, row.allows() ? SourceLicence.Terms.ALLOWS : SourceLicence.Terms.FORBIDS,
                        row.keep(), row.onward(), place))
                .orElseGet(() -> new SourceLicence(words, SourceLicence.Terms.NOT_KNOWN, Optional.empty(), List.of(), place));
    }
}

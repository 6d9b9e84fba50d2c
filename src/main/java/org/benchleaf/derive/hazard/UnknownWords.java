package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Locale;
import org.benchleaf.message.Holes;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Reference;

/** Says what is not known about a mixture, in the words of the table of sentences. */
final class UnknownWords {

    private final Reference reference;

    UnknownWords(Reference reference) {
        this.reference = reference;
    }

    /** A part of which nothing is known. */
    Hazards.Unknown part(String name) {
        return of("composition", "part-unknown", "part", name);
    }

    /** A thing whose name speaks of a substance. */
    Hazards.Unknown thing(String name, String substance) {
        return of("composition", "thing-named", "part", name, "substance", substance);
    }

    /** A material whose name speaks of a substance that it is not made of. */
    Hazards.Unknown named(String name, String substance) {
        return of("composition", "material-named", "part", name, "substance", substance);
    }

    /** A tool whose name says of no known tool that it is one. */
    Hazards.Unknown unfamiliar(String name) {
        return of("composition", "thing-unfamiliar", "part", name);
    }

    /** A thing whose name says that it holds something, or is sold wet. */
    Hazards.Unknown soaked(String name, String word) {
        return of("composition", "thing-soaked", "part", name, "word", word);
    }

    /** A part that names a substance which the table does not have. */
    Hazards.Unknown substance(String name, String substance) {
        List<String> near = reference.substanceNames().anyMatch(substance::equals) ? List.of()
                : Nearest.several(substance.toLowerCase(Locale.ROOT), reference.substanceNames().toList());
        return near.isEmpty() ? of("composition", "substance-missing", "part", name, "substance", substance)
                : of("composition", "substance-near", "part", name, "substance", substance, "near", String.join("', '", near));
    }

    /** A saturated solution of which nobody has said how strong it is. */
    Hazards.Unknown saturated(String name) {
        return of("composition", "saturated-unknown", "part", name);
    }

    /** A part of a mixture by volume whose share by mass cannot be had. */
    Hazards.Unknown shareByMass(String name, String why) {
        return of("composition", "density-missing", "part", name, "why", why);
    }

    /** A stock that is not pure, and of which nobody has said what the rest is. */
    Hazards.Unknown restOf(String name, String substance) {
        return of("composition", "rest-missing", "part", name, "substance", substance);
    }

    /** The sentence of this key about this, with its holes filled. */
    Hazards.Unknown of(String about, String key, Object... pairs) {
        Reference.Wording wording = reference.wordings().get(key);
        if (wording == null) {
            // Only tables that tests make by hand lack the sentences.
            return new Hazards.Unknown(about, key, "");
        }
        return new Hazards.Unknown(about, Holes.fill(wording.words(), pairs),
                wording.remedy().map(remedy -> Holes.fill(remedy, pairs)).orElse(""));
    }
}

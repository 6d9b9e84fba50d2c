package org.benchleaf.derive;

import java.util.List;
import java.util.Optional;

/**
 * What a prepared solution or a material can do, classified from its composition.
 *
 * @param of solution or material id
 * @param signal {@code Danger}, {@code Warning} or empty
 * @param pictograms GHS numbers, such as {@code GHS02}
 * @param hazardStatements H codes, most severe first
 * @param precautions P codes
 * @param grounds how each class came about, in words with its source key; both where two rules disagree
 * @param waste what kind of waste it becomes, a key of the waste table
 * @param firstAid what first aid belongs to it, keys of the table of first aid
 * @param wear codes of protective equipment for preparing it
 * @param cautions keys of the table of cautions that are due when it is prepared
 */
public record Hazards(String of, Optional<String> signal, List<String> pictograms, List<String> hazardStatements,
        List<String> precautions, List<Ground> grounds, Optional<String> waste, List<String> firstAid,
        List<String> wear, List<String> cautions) {

    public Hazards {
        pictograms = List.copyOf(pictograms);
        hazardStatements = List.copyOf(hazardStatements);
        precautions = List.copyOf(precautions);
        grounds = List.copyOf(grounds);
        firstAid = List.copyOf(firstAid);
        wear = List.copyOf(wear);
        cautions = List.copyOf(cautions);
    }

    /** Why a class was given or not given. */
    public record Ground(String classification, String because, String source) {
    }
}

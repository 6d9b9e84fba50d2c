package org.benchleaf.rule;

import java.util.Optional;
import org.benchleaf.model.Material;
import org.benchleaf.model.Medium;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Solution;
import org.benchleaf.model.TreatmentCase;

/** Steps, media, liquids and pictures as a reader of the pages meets them, who has not seen the ids of the case file. */
final class ReadersNames {

    private final TreatmentCase treatment;
    private final Liquids liquids;

    ReadersNames(TreatmentCase treatment, Liquids liquids) {
        this.treatment = treatment;
        this.liquids = liquids;
    }

    /** What stands under an id: a medium, the paper, a solution or a material; another word, such as an indicator, is its own name. */
    String of(String id) {
        Optional<String> medium = treatment.object().media().stream().filter(one -> one.id().equals(id)).findFirst()
                .map(ReadersNames::medium);
        Optional<String> solution = treatment.solution(id).map(Solution::name);
        return medium.or(() -> id.equals(Layer.PAPER) ? Optional.of("the paper") : Optional.empty())
                .or(() -> solution.or(() -> liquids.material(id).map(Material::name)).map(name -> "‘" + name + "’")).orElse(id);
    }

    private static String medium(Medium medium) {
        String colour = medium.colourBeside().map(known -> known + " ").orElse("");
        return WordComparison.known(medium.is()) ? "the " + colour + medium.is() : "a medium of which it is not told what it is";
    }

    /** What stands under the id of a picture. */
    String ofPicture(String id) {
        return treatment.pictures().stream().filter(one -> one.id().equals(id)).map(Picture::caption).findFirst()
                .map(caption -> "‘" + caption + "’").orElse(id);
    }
}

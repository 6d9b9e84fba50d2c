package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.model.Picture;

/** A picture before treatment and the one after it with which it is compared. */
public record PicturePair(Picture before, Picture after) {

    /** The pairs among pictures, in the order of those before. */
    public static List<PicturePair> among(List<Picture> pictures) {
        List<PicturePair> pairs = new ArrayList<>();
        for (Picture before : pictures) {
            pictures.stream().filter(after -> arePair(before, after)).findFirst()
                    .ifPresent(after -> pairs.add(new PicturePair(before, after)));
        }
        return pairs;
    }

    private static boolean arePair(Picture before, Picture after) {
        return before.moment().equals("before") && after.moment().equals("after")
                && (before.pair().filter(after.id()::equals).isPresent() || after.pair().filter(before.id()::equals).isPresent());
    }
}

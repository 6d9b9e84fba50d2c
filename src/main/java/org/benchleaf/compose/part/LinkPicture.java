package org.benchleaf.compose.part;

import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Picture;

/**
 * The picture that programs show beside a link to a case (Open Graph): the sheet before and after, or as it is now.
 *
 * @param path from the site's root
 * @param pictures of which it is made, from left to right
 */
public record LinkPicture(String path, List<Picture> pictures) {

    public LinkPicture {
        pictures = List.copyOf(pictures);
    }

    /** That of a case of which these pictures may be shown; empty if there are none. */
    static Optional<LinkPicture> of(String path, List<Picture> shown) {
        return PicturePair.among(shown).stream().findFirst().map(pair -> List.of(pair.before(), pair.after()))
                .or(() -> standsForIt(shown).map(List::of)).map(pictures -> new LinkPicture(path, pictures));
    }

    /** The sheet as it is now, for a library shows what was saved, not what was lost. */
    public static Optional<Picture> standsForIt(List<Picture> pictures) {
        return pictures.stream().filter(picture -> picture.moment().equals("after")).findFirst()
                .or(() -> pictures.stream().findFirst());
    }

    /** What it shows last: the sheet as it is now. */
    String alt() {
        return pictures.get(pictures.size() - 1).alt();
    }
}

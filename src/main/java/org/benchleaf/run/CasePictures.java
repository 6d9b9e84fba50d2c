package org.benchleaf.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.compose.cases.PictureManifest;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.LinkPicture;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Picture;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.OnTheWeb;
import org.benchleaf.publish.LinkPictureMaker;
import org.benchleaf.publish.PictureFile;
import org.benchleaf.publish.PictureMaker;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.Rendition;
import org.benchleaf.publish.SiteFile;

/** The published pictures of one case: their files, and the sizes that its pages name. */
final class CasePictures implements Pictures {

    private final Map<String, List<Rendition>> sizes = new LinkedHashMap<>();
    private final List<SiteFile> files = new ArrayList<>();

    private CasePictures() {
    }

    /** Makes every picture that may be shown; what cannot be made is told. */
    static CasePictures make(Path content, TreatmentCase treatment, Clearance clearance, Messages messages) {
        CasePictures made = new CasePictures();
        for (Picture picture : clearance.pictures(treatment)) {
            made.add(picture.id(), PictureMaker.make(treatment.id(), folder(content, treatment.id()), picture, messages));
        }
        return made;
    }

    /** The sizes of every picture that may be shown, without their files; what cannot be made is told. */
    static CasePictures sizes(Path content, TreatmentCase treatment, Clearance clearance, Messages messages) {
        CasePictures sizes = new CasePictures();
        for (Picture picture : clearance.pictures(treatment)) {
            sizes.sizes.put(picture.id(),
                    PictureMaker.sizes(treatment.id(), folder(content, treatment.id()), picture, messages));
        }
        return sizes;
    }

    /** Where the pictures of a case lie. */
    static Path folder(Path content, String caseId) {
        return content.resolve("cases").resolve(caseId).resolve("pictures");
    }

    private void add(String id, List<PictureFile> made) {
        sizes.put(id, made.stream().map(one -> new Rendition(one.file().path(), one.width(), one.height())).toList());
        made.forEach(one -> files.add(one.file()));
    }

    List<SiteFile> files() {
        return files;
    }

    @Override
    public List<Rendition> of(String caseId, String pictureId) {
        return sizes.getOrDefault(pictureId, List.of());
    }

    /** What viewers of other sites read of the pictures, with the sizes of their files; none where they may not be shown. */
    List<DataFile> manifest(Optional<PictureManifest> manifest) {
        return manifest.filter(any -> sizes.values().stream().noneMatch(List::isEmpty)).map(one -> one.file(picture ->
                of("", picture).stream().map(size -> new PictureManifest.Size(size.path(), size.width(), size.height())).toList()))
                .stream().toList();
    }

    /** The picture beside a link to the case; none where one of its pictures could not be made. */
    Optional<SiteFile> link(Optional<LinkPicture> link) {
        return link.flatMap(one -> {
            List<SiteFile> finished = one.pictures().stream().flatMap(picture -> of("", picture.id()).stream()
                    .filter(size -> size.width() >= OnTheWeb.PICTURE_WIDTH / 2).findFirst().or(() -> last(of("", picture.id()))).stream())
                    .flatMap(size -> files.stream().filter(file -> file.path().equals(size.path()))).toList();
            return finished.size() < one.pictures().size() ? Optional.empty() : Optional.of(LinkPictureMaker.make(one, finished));
        });
    }

    private static Optional<Rendition> last(List<Rendition> sizes) {
        return sizes.isEmpty() ? Optional.empty() : Optional.of(sizes.get(sizes.size() - 1));
    }

    /** The sizes of one picture as a card keeps them. */
    List<String> noted(String pictureId) {
        return of("", pictureId).stream().map(size -> size.path() + " " + size.width() + " " + size.height()).toList();
    }

    /** The pictures that the cards of the cases keep, for the pages of the whole site. */
    static Pictures noted(List<CaseCard> cards) {
        Map<String, List<Rendition>> sizes = new LinkedHashMap<>();
        cards.forEach(card -> sizes.put(card.id() + "/" + card.picture(),
                card.pictureFiles().stream().map(CasePictures::size).toList()));
        return (caseId, pictureId) -> sizes.getOrDefault(caseId + "/" + pictureId, List.of());
    }

    private static Rendition size(String noted) {
        String[] parts = noted.split(" ");
        return new Rendition(parts[0], Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
    }
}

package org.benchleaf.run;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Picture;
import org.benchleaf.publish.PictureFile;
import org.benchleaf.publish.PictureMaker;
import org.benchleaf.publish.SiteFile;

/** Files made of pictures, kept for as long as the picture stands unchanged on the disk; the last few dozen pictures alone. */
final class WarmPictures {

    private static final int MOST = 48;

    private final Map<List<Object>, List<SiteFile>> made = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, List<SiteFile>> eldest) {
            return size() > MOST;
        }
    };

    /**
     * A picture on the disk.
     *
     * @param folder of the pictures of its case
     * @param stand its size and the time of its last change
     */
    record Source(String caseId, Path folder, String stand, Picture picture) {

        /** What decides over the bytes of its files; the words beside a picture do not. */
        private List<Object> key() {
            return List.of(caseId, folder.resolve(picture.file()), stand, picture.id(), picture.credit(), picture.licence());
        }
    }

    /** One file of a picture; empty if the picture cannot be used or gives no such file. */
    synchronized Optional<SiteFile> file(Source source, String path) {
        List<SiteFile> files = made.get(source.key());
        if (files == null) {
            // What is the matter with a picture is told when its case is checked.
            files = PictureMaker.make(source.caseId(), source.folder(), source.picture(), new Messages()).stream()
                    .map(PictureFile::file).toList();
            made.put(source.key(), files);
        }
        return files.stream().filter(file -> file.path().equals(path)).findFirst();
    }
}

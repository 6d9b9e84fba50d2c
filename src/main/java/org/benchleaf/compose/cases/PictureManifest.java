package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Licences;
import org.benchleaf.compose.part.PicturePair;
import org.benchleaf.compose.part.WebAddress;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/**
 * The pictures of a case for viewers of other sites (IIIF Presentation API 3.0): before and after as a choice on one canvas, with
 * the marks of the condition. It names whole addresses, so it needs the site's address on the web.
 */
public final class PictureManifest {

    private static final String CONTEXT = "http://iiif.io/api/presentation/3/context.json";

    private final CaseDesk desk;
    private final WebAddress web;
    private final Words words;
    private final PictureMarks marks;

    private PictureManifest(CaseDesk desk, WebAddress web) {
        this.desk = desk;
        this.web = web;
        this.words = Words.in(desk.treatment().language());
        this.marks = new PictureMarks(desk);
    }

    /**
     * One published size of a picture.
     *
     * @param path from the site's root
     * @param width in pixels
     * @param height in pixels
     */
    public record Size(String path, int width, int height) {
    }

    /** The manifest of a case; empty without an address on the web, without pictures, or where the public text is not permitted. */
    public static Optional<PictureManifest> of(CaseDesk desk) {
        boolean told = desk.clearance().audience().isPublic() && desk.clearance().allows(Clearance.Output.CASE_STUDY);
        return !told || desk.pictures().isEmpty() ? Optional.empty()
                : WebAddress.of(desk.library().studio()).map(web -> new PictureManifest(desk, web));
    }

    /** The file beside the case study; {@code sizes} tells those of a picture by its id, narrowest first. */
    public DataFile file(Function<String, List<Size>> sizes) {
        TreatmentCase treatment = desk.treatment();
        Studio studio = desk.library().studio();
        return new DataFile(desk.path(Paths.MANIFEST),
                JsonText.script(JsonText.object("@context", CONTEXT, "id", address(Paths.MANIFEST), "type", "Manifest",
                "label", said(treatment.title()), "summary", said(treatment.summary()),
                "metadata", List.of(entry(words.say("fact.object"), treatment.object().kind())),
                "rights", Licences.rights(treatment.publication().licence()),
                "requiredStatement", entry(words.say("manifest.credit"), credits()),
                "provider", List.of(JsonText.object("id", web.root(), "type", "Agent", "label", said(studio.name()),
                        "homepage", List.of(homepage(web.root(), studio.name())))),
                "homepage", List.of(homepage(address("index.html"), treatment.title())), "items", canvases(sizes))) + "\n");
    }

    private String[] credits() {
        return desk.pictures().stream().map(picture -> words.say("photo.credit", "credit", picture.credit(), "licence", picture.licence()))
                .distinct().toArray(String[]::new);
    }

    private Object homepage(String address, String label) {
        return JsonText.object("id", address, "type", "Text", "label", said(label), "format", "text/html");
    }

    private Map<String, Object> entry(String label, String... values) {
        return JsonText.object("label", said(label), "value", said(values));
    }

    private Map<String, Object> said(String... values) {
        return JsonText.object(desk.treatment().language(), List.of(values));
    }

    private String address(String file) {
        return web.to(desk.path(file));
    }

    private List<Object> canvases(Function<String, List<Size>> sizes) {
        List<Object> canvases = new ArrayList<>();
        Set<String> shown = new HashSet<>();
        for (PicturePair pair : PicturePair.among(desk.pictures())) {
            shown.addAll(List.of(pair.before().id(), pair.after().id()));
            canvases.add(canvas(List.of(pair.before(), pair.after()), sizes));
        }
        desk.pictures().stream().filter(picture -> !shown.contains(picture.id())).forEach(picture ->
                canvases.add(canvas(List.of(picture), sizes)));
        return canvases;
    }

    private Object canvas(List<Picture> pictures, Function<String, List<Size>> sizes) {
        Picture first = pictures.get(0);
        Size size = largest(sizes.apply(first.id()));
        String id = address("canvas/" + first.id());
        List<Object> bodies = pictures.stream().map(picture -> image(picture, largest(sizes.apply(picture.id())))).toList();
        return JsonText.object("id", id, "type", "Canvas", "label", said(first.caption()), "height", size.height(), "width", size.width(),
                "items", List.of(page(id + "/page", List.of(annotation(id + "/painting", "painting",
                        bodies.size() == 1 ? bodies.get(0) : JsonText.object("type", "Choice", "items", bodies), id)))),
                "annotations", marked(first, id, size));
    }

    private static Size largest(List<Size> sizes) {
        return sizes.get(sizes.size() - 1);
    }

    private Object image(Picture picture, Size size) {
        return JsonText.object("id", web.to(size.path()), "type", "Image", "format", "image/jpeg", "height", size.height(),
                "width", size.width(), "label", said(Stream.of("before", "after").filter(picture.moment()::equals)
                        .map(moment -> words.say("comparison." + moment)).findFirst().orElse(picture.caption())));
    }

    private List<Object> marked(Picture picture, String canvas, Size size) {
        List<Object> notes = marks.on(picture.id()).stream().map(mark -> annotation(canvas + "/mark/" + mark.number(), "commenting",
                JsonText.object("type", "TextualBody", "value", mark.text(), "language", desk.treatment().language(), "format",
                        "text/plain"),
                canvas + "#" + mark.region(size.width(), size.height()))).toList();
        return notes.isEmpty() ? List.of() : List.of(page(canvas + "/marks", notes));
    }

    private static Object page(String id, List<Object> annotations) {
        return JsonText.object("id", id, "type", "AnnotationPage", "items", annotations);
    }

    private static Object annotation(String id, String motivation, Object body, String target) {
        return JsonText.object("id", id, "type", "Annotation", "motivation", motivation, "body", body, "target", target);
    }
}

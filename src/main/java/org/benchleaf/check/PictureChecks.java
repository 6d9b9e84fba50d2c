package org.benchleaf.check;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.message.Messages;
import org.benchleaf.message.PictureMessages;
import org.benchleaf.message.PortableName;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.model.Picture;
import org.benchleaf.model.TreatmentCase;

/** Reads what the case says about its pictures; the files themselves are looked at when they are made. */
final class PictureChecks {

    private static final int LONGEST_ALT = 150;
    private static final Pattern ELSEWHERE = Pattern.compile("^\\.|[/\\\\:\\x00]");
    private static final Pattern FILE_NAME = Pattern.compile(
            "(?i)^(?:\\S+\\.(jpe?g|png|webp|tiff?|gif|bmp|heic|svg)|(img|dsc|dscn|dscf|pict?|p|scan|photo|image)[-_ ]?\\d+)");

    private PictureChecks() {
    }

    static void review(TreatmentCase source, Messages messages) {
        Map<String, String> files = new HashMap<>();
        for (Picture picture : source.pictures()) {
            fileName(picture, Optional.ofNullable(files.putIfAbsent(PortableName.folded(picture.file()), picture.file())), messages);
            alternative(picture, messages);
            other(source, picture).ifPresent(other -> pair(picture, other, messages));
        }
        source.translations().forEach(translation -> source.pictures().forEach(picture ->
                translation.text("pictures." + picture.id() + ".alt").filter(alt -> alt.length() > LONGEST_ALT).ifPresent(alt ->
                        messages.add(PictureMessages.ALT_TOO_LONG.at(translation.place(), "picture", picture.id(),
                                "length", alt.length())))));
    }

    /**
     * What leads to another folder is told where the file is looked for.
     *
     * @param other the file of an earlier picture whose name is the same where capitals do not count
     */
    private static void fileName(Picture picture, Optional<String> other, Messages messages) {
        String file = picture.file();
        Optional<String> fault = other.flatMap(earlier -> PortableName.fault(file, earlier)).or(() -> PortableName.fault(file));
        fault.filter(reason -> !ELSEWHERE.matcher(file).find()).ifPresent(reason -> messages.add(ReadingMessages.FILE_NAME.at(
                picture.place(), "name", file, "reason", reason, "most", PortableName.LONGEST)));
    }

    private static void alternative(Picture picture, Messages messages) {
        String alt = picture.alt().strip();
        if (alt.isEmpty()) {
            messages.add(PictureMessages.ALT_MISSING.at(picture.place(), "picture", picture.id()));
        } else if (FILE_NAME.matcher(alt).matches() || alt.equalsIgnoreCase(bare(picture.file()))) {
            messages.add(PictureMessages.ALT_IS_FILE_NAME.at(picture.place(), "picture", picture.id(), "alt", alt));
        } else if (alt.length() > LONGEST_ALT) {
            messages.add(PictureMessages.ALT_TOO_LONG.at(picture.place(), "picture", picture.id(), "length",
                    alt.length()));
        }
    }

    private static String bare(String file) {
        return file.replaceFirst("\\.[^.]*$", "");
    }

    /** The other picture of a pair; each pair is told once, at the picture written later. */
    private static Optional<Picture> other(TreatmentCase source, Picture picture) {
        int own = source.pictures().indexOf(picture);
        return source.pictures().stream().limit(own).filter(one -> picture.pair().filter(one.id()::equals).isPresent()
                || one.pair().filter(picture.id()::equals).isPresent()).findFirst();
    }

    private static void pair(Picture picture, Picture other, Messages messages) {
        if (!picture.alt().isBlank() && plain(picture.alt()).equals(plain(other.alt()))) {
            messages.add(PictureMessages.ALT_TWICE.at(picture.place(), "picture", picture.id(), "other", other.id()));
        }
        if (picture.moment().equals(other.moment())) {
            messages.add(PictureMessages.PAIR_MOMENT.at(picture.place(), "picture", picture.id(), "other", other.id(),
                    "moment", picture.moment()));
        }
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}

package org.benchleaf.check;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.Citing;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Publication;
import org.benchleaf.read.SourceLicenceReader;

/** Reads who may see what of a case. */
final class PublicationForm {

    private final Fields.Soundness words;

    /**
     * Prepares reading.
     *
     * @param words where it is noted if a word is missing that decides nothing, such as the licence
     */
    PublicationForm(Fields.Soundness words) {
        this.words = words;
    }

    Publication read(Fields fields) {
        Publication.State state = fields.need(fields.word("state", word -> Stream.of(Publication.State.values())
                .filter(known -> known.name().toLowerCase(Locale.ROOT).equals(word)).findFirst()),
                "state", Publication.State.DRAFT);
        return new Publication(state, fields.noting(words).needText("licence"),
                fields.text("source licence").map(licence -> SourceLicenceReader.of(licence, fields.place("source licence"))),
                fields.latest("withhold until"),
                fields.noting(words).word("strengths for the public", Fields::yesOrNo),
                fields.groups("permissions").stream().map(this::permission).toList(), citing(fields), fields.place());
    }

    private static Citing citing(Fields fields) {
        List<Citing.Version> versions = fields.groups("versions").stream().map(one -> new Citing.Version(
                one.need(one.date("on"), "on", LocalDate.EPOCH), one.needText("changed"))).toList();
        Optional<String> identifier = fields.text("identifier");
        identifier.filter(text -> !text.startsWith("doi:10.") && !text.startsWith("ark:")).ifPresent(text ->
                fields.messages().add(FormMessages.WRONG_SHAPE.at(fields.place("identifier"), "found", "'" + text + "'",
                        "wanted", "'doi:10.' or 'ark:' and the rest as it was given", "example", "doi:10.5555/12345678")));
        return new Citing(fields.texts("authors"), identifier, versions);
    }

    private Permission permission(Fields fields) {
        Set<Permission.Use> uses = EnumSet.noneOf(Permission.Use.class);
        fields.texts("for").forEach(word -> Stream.of(Permission.Use.values())
                .filter(use -> use.name().toLowerCase(Locale.ROOT).equals(word)).findFirst()
                .ifPresentOrElse(uses::add, () -> fields.soundness().spoil(fields.place("for"))));
        // A permission that is still to come is told by what it does not yet allow.
        LocalDate on = fields.need(fields.latest("on"), "on", LocalDate.EPOCH);
        Optional<LocalDate> withdrawn = fields.earliest("withdrawn");
        if (withdrawn.filter(on::isAfter).isPresent()) {
            fields.messages().add(FormMessages.PERMISSION_ENDS_FIRST.at(fields.place("withdrawn"),
                    "withdrawn", withdrawn.get(), "on", on));
        }
        Optional<LocalDate> until = fields.earliest("until");
        if (until.filter(on::isAfter).isPresent()) {
            fields.messages().add(FormMessages.PERMISSION_ENDS_FIRST.at(fields.place("until"),
                    "withdrawn", until.get(), "on", on));
        }
        Set<Permission.Covered> covers = EnumSet.noneOf(Permission.Covered.class);
        fields.texts("covers").forEach(word -> Permission.Covered.of(word)
                .ifPresentOrElse(covers::add, () -> fields.soundness().spoil(fields.place("covers"))));
        return new Permission(uses, fields.noting(words).needText("from"), on, covers,
                fields.noting(words).text("note").orElse(""), until, withdrawn, fields.place());
    }
}

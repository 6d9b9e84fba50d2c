package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.SOURCE;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.CaseSources;
import org.benchleaf.model.Passage;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Retelling;
import org.benchleaf.model.SourceLicence;

/** Reads from which publications a case and its parts are told. */
final class SourceForm {

    private static final String KEY = "source";

    private final Context context;
    private final Fields root;

    SourceForm(Context context, Fields root) {
        this.context = context;
        this.root = root;
    }

    /** The sources of the case; that they and its licences do not fit each other is said. */
    CaseSources read(Publication publication) {
        Optional<Fields> source = root.group(KEY);
        Optional<String> usual = source.map(fields -> fields.needText("of"));
        Optional<Retelling> retelling = source.map(fields -> new Retelling(passage(fields, usual),
                fields.needText("retold by"), fields.needText("read"), fields.needText("not read")));
        checkLicence(publication);
        Map<String, Passage> figures = new HashMap<>();
        source.flatMap(fields -> fields.group("figures")).ifPresent(group ->
                group.named().forEach((name, fields) -> figures.put(name, passage(fields, usual))));
        return new CaseSources(retelling, parts(usual), figures);
    }

    private Map<String, Passage> parts(Optional<String> usual) {
        Map<String, Passage> parts = new HashMap<>();
        Map.of("steps", "id", "results", "measure").forEach((list, named) -> root.groups(list).forEach(part ->
                part.group(KEY).ifPresent(fields -> parts.put(part.place(named).pointer(), passage(fields, usual)))));
        return parts;
    }

    private Passage passage(Fields fields, Optional<String> usual) {
        fields.scalar("of").ifPresent(key -> context.references().use(key, SOURCE));
        Optional<String> of = fields.text("of").or(() -> usual);
        if (of.isEmpty()) {
            fields.messages().add(FormMessages.PASSAGE_OF_NOTHING.at(fields.place()));
        }
        return new Passage(of.orElse(""), fields.text("where"), fields.text("words"), fields.place());
    }

    private void checkLicence(Publication publication) {
        Optional<SourceLicence> licence = publication.sourceLicence();
        if (root.has(KEY) && licence.isEmpty()) {
            root.messages().add(FormMessages.SOURCE_LICENCE_MISSING.at(root.keyPlace(KEY)));
        }
        licence.filter(any -> !root.has(KEY)).ifPresent(stated ->
                root.messages().add(FormMessages.LICENCE_WITHOUT_SOURCE.at(stated.place())));
        licence.filter(stated -> !stated.onward().isEmpty() && !stated.onward().contains(publication.licence()))
                .ifPresent(stated -> root.messages().add(FormMessages.LICENCE_NOT_ALIKE.at(stated.place(),
                        "licence", publication.licence(), "source", stated.words(),
                        "onward", String.join("' or '", stated.onward()))));
    }
}

package org.benchleaf.derive;

import java.util.List;
import java.util.Set;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Story;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;

/** Checks that every figure which the text cites, and every figure to which a publication is cited, is there. */
final class Citations {

    private Citations() {
    }

    static void check(TreatmentCase source, Set<String> figures, Messages messages) {
        check(source.id(), source.story(), figures, messages);
        source.sources().figures().forEach((figure, passage) -> {
            if (!figures.contains(figure)) {
                messages.add(FigureMessages.PASSAGE_OF_NO_FIGURE.at(passage.place(), "figure", figure, "hint",
                        hint(source.id(), figure, figures)));
            }
        });
        source.translations().stream().map(Translation::story).forEach(story -> check(source.id(), story, figures, messages));
    }

    private static void check(String id, Story story, Set<String> figures, Messages messages) {
        for (Story.Section section : story.sections()) {
            for (Story.Citation citation : section.citations()) {
                if (!figures.contains(citation.figure())) {
                    messages.add(FigureMessages.UNKNOWN_FIGURE.at(citation.place(), "figure", citation.figure(),
                            "hint", hint(id, citation.figure(), figures)));
                }
            }
        }
    }

    private static String hint(String id, String cited, Set<String> figures) {
        List<String> near = Nearest.several(cited, figures);
        if (!near.isEmpty()) {
            return "Did you mean " + String.join(" or ", near) + "?";
        }
        String owner = cited.contains(".") ? cited.substring(0, cited.indexOf('.') + 1) : cited + ".";
        List<String> siblings = figures.stream().filter(name -> name.startsWith(owner)).sorted().toList();
        return siblings.isEmpty() ? "'benchleaf figures " + id + "' lists the figures of this case."
                : "There are " + String.join(", ", siblings) + ".";
    }
}

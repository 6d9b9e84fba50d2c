package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.model.PublicCare;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Section;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Tells the owner of a sheet like the one treated how to keep it, and whom to ask. */
public final class HomeAdvice {

    private final Sheet sheet;

    public HomeAdvice(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The advice that is due for the sheet of a case. */
    public Section section(TreatmentCase treatment) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        sheet.library().reference().publicCare().adviceFor(SheetWords.described(treatment)).forEach(advice ->
                facts.add(new Fact(words.say("home.about-" + advice.about()), sourced(advice))));
        ask(sheet.library().studio()).forEach(line -> facts.add(Fact.of(words.say("home.ask"), line)));
        return new Section("home", words.say("home.heading"), Optional.of(words.say("home.lead")), List.of(new Facts(facts)));
    }

    private RichText sourced(PublicCare.Advice advice) {
        RichText told = sheet.linked(advice.words());
        return sheet.cite(advice.source()).map(citation -> told.then(" ").then(citation.link())).orElse(told);
    }

    private List<String> ask(Studio studio) {
        Words words = sheet.words();
        List<String> lines = new ArrayList<>();
        if (!studio.contact().isEmpty()) {
            lines.add(words.say("home.ask-studio", "studio", studio.name(), "contact", studio.contact().stream().map(sheet.library().phrases()::of)
                    .collect(Collectors.joining("; "))));
        }
        lines.add(words.say("home.ask-others"));
        return lines;
    }
}

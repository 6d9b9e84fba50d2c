package org.benchleaf.compose.part;

import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.PublicCare;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Trial;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Section;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Tells the owner of a sheet of paper how to keep it, and whom to ask. */
public final class HomeAdvice {

    private static final String WWW = "www.";

    private final Sheet sheet;

    public HomeAdvice(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The advice that is due for the sheet of a case, and whom to ask. */
    public Section section(TreatmentCase treatment) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>(facts(sheet.library().reference().publicCare().adviceFor(SheetWords.described(treatment))));
        facts.addAll(ask());
        String heading = treatment.object().kind().equals(Trial.Ground.TEST_SHEETS.word()) ? "home.heading-any" : "home.heading";
        return new Section("home", words.say(heading), Optional.of(words.say("home.lead")), List.of(new Facts(facts)));
    }

    /** All advice: what is due for any sheet, then what is due for each sort of sheet, then whom to ask. */
    public List<Section> sections() {
        Words words = sheet.words();
        Map<String, List<PublicCare.Advice>> bySheets = new LinkedHashMap<>(Map.of("", new ArrayList<>()));
        sheet.library().reference().publicCare().keeping().forEach(advice ->
                bySheets.computeIfAbsent(advice.sheets(), any -> new ArrayList<>()).add(advice));
        List<Section> sections = new ArrayList<>();
        bySheets.forEach((sheets, advice) -> sections.add(new Section("home-" + (sections.size() + 1),
                sheets.isEmpty() ? words.say("home.any") : sheets, Optional.empty(), List.of(new Facts(facts(advice))))));
        sections.add(new Section("ask", words.say("home.ask"), Optional.empty(), List.of(new Facts(ask()))));
        return sections;
    }

    private List<Fact> facts(List<PublicCare.Advice> due) {
        return due.stream().map(advice -> new Fact(sheet.words().say("home.about-" + advice.about()), sourced(advice))).toList();
    }

    private RichText sourced(PublicCare.Advice advice) {
        RichText told = advice.address().map(address -> sheet.linked(advice.words()).then(" ").then(link(address)))
                .orElseGet(() -> sheet.linked(advice.words()));
        return told.then(" ").then(sheet.cite(advice.source()).map(citation -> RichText.of(citation.link()))
                .orElseGet(() -> RichText.of("(" + sheet.words().say("rules.common-practice") + ")")));
    }

    /** A list by the name of its site, so that a reader sees on paper too where it stands. */
    private static Inline.Hyperlink link(String address) {
        String host = URI.create(address).getHost();
        return Inline.Hyperlink.to(address, host.startsWith(WWW) ? host.substring(WWW.length()) : host);
    }

    /** The studio first, and an invented one, which answers nobody, last. */
    private List<Fact> ask() {
        Words words = sheet.words();
        Studio studio = sheet.library().studio();
        List<RichText> lines = new ArrayList<>(List.of(RichText.of(words.say("home.ask-others"))));
        List<PublicCare.Advice> rows = sheet.library().reference().publicCare().lists();
        rows.stream().filter(row -> !row.about().equals(PublicCare.Advice.PRICE)).map(this::sourced).forEach(lines::add);
        if (!studio.contact().isEmpty()) {
            String name = studio.demo() ? words.say("home.ask-invented", "studio", studio.name()) : studio.name();
            lines.add(studio.demo() ? lines.size() : 0, RichText.of(name + words.say("list.colon")).then(
                    RichText.joined("; ", studio.contact().stream().map(sheet.library().phrases()::of).map(ContactLine::of).toList())));
        }
        return Stream.concat(lines.stream().map(line -> new Fact(words.say("home.ask"), line)),
                facts(rows.stream().filter(row -> row.about().equals(PublicCare.Advice.PRICE)).toList()).stream()).toList();
    }
}

package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.SubstanceMaker;
import org.benchleaf.model.Material;
import org.benchleaf.model.Substance;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Note;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** The substances that the site's cases use, each with what is known of it and where that was read. */
public final class SubstancesPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("substances", Paths.SUBSTANCES, false);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.substances");
        SubstanceMaker maker = new SubstanceMaker(sheet);
        sheet.add(Opening.plain(title, words.say("substances.lead")));
        if (desk.cards().stream().allMatch(card -> card.substances().isEmpty())) {
            sheet.add(new Note("plain", words.say("notice.word"), RichText.of(words.say("substances.no-case"))));
        }
        used(desk).forEach((key, materials) -> sheet.add(section(sheet, maker,
                desk.library().reference().substances().get(key), materials)));
        return List.of(sheet.page(title, words.say("substances.lead")));
    }

    /** Keys of the substances of the cases, by the alphabet, each with the materials that are made of it. */
    private static Map<String, List<Material>> used(SiteDesk desk) {
        Map<String, List<Material>> used = new TreeMap<>();
        desk.cards().forEach(card -> card.substances().forEach(key -> used.putIfAbsent(key, new ArrayList<>())));
        desk.library().materials().values().forEach(material -> material.substance()
                .ifPresent(key -> used.computeIfPresent(key, (same, materials) -> {
                    materials.add(material);
                    return materials;
                })));
        used.keySet().retainAll(desk.library().reference().substances().keySet());
        return used;
    }

    private static Section section(Sheet sheet, SubstanceMaker maker, Substance substance, List<Material> materials) {
        List<RichText> links = materials.stream().map(material -> sheet.hyperlink(material.name(), Paths.material(material.id())))
                .map(RichText::of).toList();
        List<Fact> facts = new ArrayList<>();
        if (!materials.isEmpty()) {
            facts.add(new Fact(sheet.words().say("substances.materials"), RichText.joined(", ", links)));
        }
        facts.addAll(maker.everything(substance));
        return new Section("substance-" + Paths.slug(substance.key()), substance.name(), Optional.empty(),
                List.of(new Facts(facts)));
    }
}

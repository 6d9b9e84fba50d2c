package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageName;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** Lists beside a case study what other programs can read of the case. */
final class OpenData {

    private OpenData() {
    }

    static Optional<Section> section(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<LinkList.Entry> links = new ArrayList<>();
        if (PictureManifest.of(desk).isPresent()) {
            links.add(new LinkList.Entry(sheet.link(words.say("open-data.pictures"), desk.path(Paths.MANIFEST)),
                    words.say("open-data.pictures-about")));
        }
        if (LinkedArt.of(desk).isPresent()) {
            links.add(new LinkList.Entry(sheet.link(words.say("open-data.record"), desk.path(Paths.LINKED_ART)),
                    words.say("open-data.record-about")));
        }
        if (desk.has(CasePageName.RESULTS) && desk.clearance().allows(Clearance.Output.DATA)) {
            links.add(new LinkList.Entry(sheet.link(words.say("open-data.tables"),
                    Paths.results(desk.treatment().id()) + "#" + ResultsPage.DATA), words.say("open-data.tables-about")));
        }
        return links.isEmpty() ? Optional.empty() : Optional.of(new Section("open-data", words.say("open-data.heading"),
                Optional.of(words.say("open-data.lead")), List.of(new LinkList(links))));
    }
}

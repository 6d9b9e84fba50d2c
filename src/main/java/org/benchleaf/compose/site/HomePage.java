package org.benchleaf.compose.site;

import java.util.List;
import org.benchleaf.compose.part.HomeAdvice;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** What the owner of a sheet of paper can do at home, for any sheet and for each sort of it, and whom to ask. */
public final class HomePage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("home", Paths.AT_HOME, true);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.home");
        sheet.add(Opening.plain(title, words.say("home.page-lead")));
        new HomeAdvice(sheet).sections().forEach(sheet::add);
        return List.of(sheet.page(title, words.say("home.page-lead")));
    }
}

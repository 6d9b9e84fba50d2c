package org.benchleaf.compose;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.compose.cases.CaseStudyPage;
import org.benchleaf.compose.cases.PreparationPage;
import org.benchleaf.compose.cases.ResultsPage;
import org.benchleaf.compose.cases.StepSheetPage;
import org.benchleaf.compose.classes.AssessmentPage;
import org.benchleaf.compose.classes.ClassLabelsPage;
import org.benchleaf.compose.classes.ClassPage;
import org.benchleaf.compose.classes.ClassPageMaker;
import org.benchleaf.compose.classes.ClassPreparationPage;
import org.benchleaf.compose.classes.ClassRecordPage;
import org.benchleaf.compose.classes.OrderListPage;
import org.benchleaf.compose.classes.StationSheetsPage;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.CasePageMaker;
import org.benchleaf.compose.part.PageNames;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.site.BrowsePages;
import org.benchleaf.compose.site.CheckedPage;
import org.benchleaf.compose.site.EvidencePages;
import org.benchleaf.compose.site.GlossaryPage;
import org.benchleaf.compose.site.HomePage;
import org.benchleaf.compose.site.LibraryPage;
import org.benchleaf.compose.site.MaterialPages;
import org.benchleaf.compose.site.MethodsPage;
import org.benchleaf.compose.site.RulesPage;
import org.benchleaf.compose.site.SearchPage;
import org.benchleaf.compose.site.SourcesPage;
import org.benchleaf.compose.site.SubstancesPage;
import org.benchleaf.compose.site.SumsPage;
import org.benchleaf.compose.site.WritingPage;
import org.benchleaf.model.Library;

/** Every kind of page, in the order of the ways to them. */
public final class PageMakers {

    public static final List<CasePageMaker> CASE = List.of(
            new CaseStudyPage(),
            new StepSheetPage(),
            new PreparationPage(),
            new ResultsPage());

    static final List<ClassPageMaker> CLASS = List.of(
            new ClassPage(),
            new ClassPreparationPage(),
            new ClassLabelsPage(),
            new StationSheetsPage(),
            new OrderListPage(),
            new AssessmentPage(),
            new ClassRecordPage());

    public static final List<SitePageMaker> SITE = List.of(
            new LibraryPage(),
            new HomePage(),
            new BrowsePages(),
            new EvidencePages(),
            new MaterialPages(),
            new SubstancesPage(),
            new GlossaryPage(),
            new SourcesPage(),
            new MethodsPage(),
            new SumsPage(),
            new CheckedPage(),
            new RulesPage(),
            new WritingPage(),
            new SearchPage());

    /** Those of the whole site that stand in each language in which a case is told. */
    static final List<SitePageMaker> TOLD = List.of(
            new LibraryPage(),
            new HomePage(),
            new MaterialPages(),
            new GlossaryPage(),
            new SumsPage(),
            new SearchPage());

    public static final PageNames NAMES = new PageNames(CASE.stream().map(CasePageMaker::name).toList(),
            SITE.stream().map(SitePageMaker::name).toList(), CLASS.stream().map(ClassPageMaker::name).toList());

    private PageMakers() {
    }

    /** The paths of the pages that stand in each language; without cards those that stand whatever cases there are. */
    static Stream<String> toldPaths(Library library, List<CaseCard> cards) {
        return TOLD.stream().flatMap(maker -> maker.paths(library, cards));
    }
}

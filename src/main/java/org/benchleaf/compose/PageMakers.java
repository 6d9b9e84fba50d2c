package org.benchleaf.compose;

import java.util.List;
import java.util.stream.Stream;

/** Every kind of page, in the order of the ways to them. */
final class PageMakers {

    static final List<CasePageMaker> CASE = List.of(
            new CaseStudyPage(),
            new StepSheetPage(),
            new PreparationPage(),
            new ResultsPage());

    static final List<ClassPageMaker> CLASS = List.of(
            new ClassPage(),
            new ClassPreparationPage(),
            new StationSheetsPage(),
            new OrderListPage(),
            new AssessmentPage(),
            new ClassRecordPage());

    static final List<SitePageMaker> SITE = List.of(
            new LibraryPage(),
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
            new GlossaryPage(),
            new SearchPage());

    static final PageNames NAMES = new PageNames(CASE.stream().map(CasePageMaker::name).toList(),
            SITE.stream().map(SitePageMaker::name).toList(), CLASS.stream().map(ClassPageMaker::name).toList());

    private PageMakers() {
    }

    /** The paths of the first pages of each kind that stands in each language. */
    static Stream<String> toldPaths() {
        return TOLD.stream().map(maker -> maker.name().path());
    }
}

package org.benchleaf.compose;

import java.util.List;

/** Every kind of page, in the order of the ways to them. */
final class PageMakers {

    static final List<CasePageMaker> CASE = List.of(
            new CaseStudyPage(),
            new StepSheetPage(),
            new PreparationPage());

    static final List<SitePageMaker> SITE = List.of(
            new LibraryPage(),
            new BrowsePages(),
            new MaterialPages(),
            new GlossaryPage(),
            new SourcesPage(),
            new MethodsPage(),
            new SearchPage());

    private PageMakers() {
    }
}

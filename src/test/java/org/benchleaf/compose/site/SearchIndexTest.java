package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.part.WordList;
import org.benchleaf.page.DataFile;
import org.junit.jupiter.api.Test;

/** The files of the search's index. */
class SearchIndexTest {

    /** The index that a search loads at once; more comes in further files. */
    private static final int MOST_BYTES = 60_000;

    private static SearchEntry entry(int number) {
        return new SearchEntry("cases/case-" + number + "/index.html", "case-study", "Poster " + number, "Case study", "",
                WordList.packed(List.of("poster", "wash" + (char) ('a' + number % 26))), WordList.packed(List.of("limewat", "tidelin")));
    }

    @Test
    void what_one_file_cannot_hold_stands_in_further_ones_each_page_once() {
        List<SearchEntry> entries = IntStream.range(0, 2000).mapToObj(SearchIndexTest::entry).toList();
        List<DataFile> files = SearchIndex.files(DemoSite.made().library(), List.of(DemoSite.made().cases().get(0).card().foundBy(entries)),
                List.of());

        assertThat(files.size()).isGreaterThan(2);
        assertThat(files).extracting(DataFile::path).startsWith("assets/search-index.js", "assets/search-index-2.js")
                .doesNotHaveDuplicates();
        assertThat(files).allSatisfy(file -> assertThat(file.text().getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(MOST_BYTES));
        List<String> lines = files.stream().flatMap(file -> file.text().lines()).filter(line -> line.contains("cases/case-")).toList();
        assertThat(lines).hasSize(2000).allMatch(line -> line.startsWith("{") && line.matches(".*},?"));
    }

    @Test
    void words_that_only_a_case_has_are_not_shared_so_that_they_leave_with_it() {
        SharedWords shared = SharedWords.of(List.of(entry(1), entry(2)));

        assertThat(WordList.unpacked(shared.packed())).containsExactly("limewat", "poster", "tidelin");
        assertThat(WordList.unpacked(shared.othersIn(WordList.packed(List.of("ferryman", "poster"))))).containsExactly("ferryman");
        assertThat(shared.placesIn(WordList.packed(List.of("limewat", "tidelin")))).isEqualTo("02");
    }

    @Test
    void packed_words_come_out_as_they_went_in() {
        List<String> words = List.of("bleach", "bleachburn", "tidelin", "wash", "ätzkalk");
        assertThat(WordList.unpacked(WordList.packed(words))).containsExactlyElementsOf(words.stream().sorted().toList());
    }
}

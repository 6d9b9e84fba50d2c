package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import org.benchleaf.command.Edits;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.message.Messages;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TakenFile;
import org.benchleaf.publish.TakenFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole cases through all stages: after any edit, publishing what changed gives what publishing everything gives. */
class IncrementalTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 6, 1);

    @TempDir
    private Path folder;
    private Path content;
    private Path templates;
    private Path site;
    private LocalDate day = FIRST_DAY;

    @BeforeEach
    void write_two_cases() throws IOException {
        content = folder.resolve("content");
        templates = folder.resolve("templates");
        site = folder.resolve("site");
        Edits.restore(content, Edits.snapshot(SOUND));
        Edits.restore(templates, Edits.snapshot(Path.of("templates")));
        Edits.restore(content.resolve("cases/ebb"), Edits.snapshot(SOUND.resolve("cases/tide")));
    }

    @ParameterizedTest
    @ValueSource(longs = 4)
    void after_any_edits_an_incremental_edition_equals_a_full_one(long seed) throws IOException {
        Edits edits = new Edits(content, templates, seed);
        Set<Edits.Kind> published = EnumSet.noneOf(Edits.Kind.class);
        while (edits.areLeft()) {
            Map<Path, byte[]> before = Edits.snapshot(content);
            List<Edits.Kind> made = edits.next();
            day = day.plusDays(edits.days());
            Run incremental = publish(site);
            Path fresh = Files.createTempDirectory(folder, "fresh").resolve("site");
            Run full = publish(fresh);
            assertThat(incremental.outcome.told()).as("after %s", made).isEqualTo(full.outcome.told());
            if (full.outcome.isNew()) {
                published.addAll(made);
                assertThat(differing(site, fresh)).as("after %s", made).isEmpty();
            } else {
                Edits.restore(content, before);
            }
        }
        assertThat(published).isEqualTo(EnumSet.complementOf(EnumSet.of(Edits.Kind.MISTAKE)));
    }

    @Test
    void one_edited_case_is_read_and_made_and_the_other_is_not() throws IOException {
        publish(site);
        append("cases/ebb/case.md", "\nOne more line.\n");
        assertThat(publish(site).touched).contains("check ebb", "make ebb").doesNotContain("check tide", "make tide");
        assertThat(publish(site).touched).isEmpty();
    }

    /** The search finds the new words; the pages of the whole site tell of a case what stands on its card. */
    @Test
    void a_word_of_a_story_changes_the_search_and_no_page_of_the_whole_site() throws IOException {
        publish(site);
        append("cases/ebb/case.md", "\nOne more line of quinces.\n");
        assertThat(publish(site).touched).containsExactly("check ebb", "make ebb", "site search");
        equalsAFreshOne();
    }

    @Test
    void a_new_title_changes_the_pages_of_the_whole_site() throws IOException {
        publish(site);
        replace("cases/ebb/case.md", "title: ", "title: Another ");
        assertThat(publish(site).touched).contains("check ebb", "make ebb", "site pages", "site search", "site first");
        equalsAFreshOne();
    }

    @Test
    void what_is_taken_away_of_the_whole_site_is_made_anew_with_a_word_of_a_story_and_its_pages_are_not() throws IOException {
        append("studio.yaml", "take along: [epub, zip]\n");
        publish(site);
        assertThat(publish(site).touched).isEmpty();
        append("cases/ebb/case.md", "\nOne more line of quinces.\n");
        assertThat(publish(site).touched).contains("site taken", "site search").doesNotContain("site pages");
        equalsAFreshOne();
    }

    @Test
    void an_edit_of_one_case_makes_its_packs_and_those_of_the_site_anew_and_no_others() throws IOException {
        append("studio.yaml", "take along: [one file, epub, zip]\n");
        publish(site);
        Map<String, ByteBuffer> before = files(site);
        append("cases/ebb/case.md", "\nOne more line of quinces.\n");
        assertThat(publish(site).touched).contains("make ebb", "site taken").doesNotContain("make tide");
        Map<String, ByteBuffer> after = files(site);
        assertThat(after.keySet()).filteredOn(path -> TakenFile.isOne(path) && !after.get(path).equals(before.get(path)))
                .anyMatch(path -> path.startsWith("cases/ebb/")).anyMatch(path -> !path.startsWith("cases/"))
                .noneMatch(path -> path.startsWith("cases/tide/"));
        equalsAFreshOne();
    }

    @Test
    void files_of_the_whole_site_that_are_gone_or_other_ones_are_made_anew() throws IOException {
        List<String> files = List.of("index.html", "glossary.html", "assets/search-index.js", "assets/site.css");
        publish(site);
        Map<Path, byte[]> whole = Edits.snapshot(site);
        for (String file : files) {
            Files.delete(site.resolve(file));
        }
        publish(site);
        files.forEach(file -> assertThat(site.resolve(file)).hasBinaryContent(whole.get(Path.of(file))));
        for (String file : files) {
            Files.writeString(site.resolve(file), "by hand");
        }
        assertThat(publish(site).outcome.told()).extracting(Told::code).contains("SITE-014");
        files.forEach(file -> assertThat(site.resolve(file)).hasBinaryContent(whole.get(Path.of(file))));
    }

    /** The pages of the whole site are kept, and none of them may hold what has become private since. */
    @Test
    void a_value_that_is_new_is_looked_for_in_the_kept_pages_of_the_whole_site() throws IOException {
        String name = "Thessaly Ravensworth";
        append("glossary.yaml", "quoin:\n  term: quoin\n  plain: A wedge as %s drew it.\n".formatted(name));
        assertThat(publish(site).outcome.isNew()).isTrue();
        replace("cases/ebb/case.md", "owner: Halcyon Brandreth-Voss", "owner: " + name);
        Run after = publish(site);
        assertThat(after.touched).doesNotContain("site pages");
        assertThat(after.outcome.told()).filteredOn(told -> told.code().equals("LEAK-001")).extracting(Told::file)
                .anyMatch(file -> file.endsWith("glossary.html")).anyMatch(file -> file.endsWith("glossary.yaml"));
        assertThat(after.outcome.isNew()).isFalse();
    }

    private void equalsAFreshOne() throws IOException {
        Path fresh = Files.createTempDirectory(folder, "fresh").resolve("site");
        publish(fresh);
        assertThat(differing(site, fresh)).isEmpty();
    }

    private void replace(String file, String text, String by) throws IOException {
        String before = Files.readString(content.resolve(file));
        assertThat(before).contains(text);
        Files.writeString(content.resolve(file), before.replaceFirst(java.util.regex.Pattern.quote(text), by));
    }

    @Test
    void the_next_day_every_case_is_checked_and_none_is_made() throws IOException {
        publish(site);
        day = day.plusDays(1);
        assertThat(publish(site).touched).containsExactly("check ebb", "check tide");
    }

    @ParameterizedTest
    @ValueSource(strings = {"content/studio.yaml", "content/glossary.yaml", "content/materials/papers.yaml",
        "templates/page.ftl"})
    void what_all_cases_share_makes_them_all_anew(String shared) throws IOException {
        publish(site);
        Path file = folder.resolve(shared);
        Files.writeString(file, Files.readString(file) + "\n");
        assertThat(publish(site).touched).contains("make ebb", "make tide");
    }

    /** What is taken away holds style, scripts and drawings inside, so that an old one would stay in it for good. */
    @Test
    void what_a_page_only_names_makes_cases_anew_where_it_is_taken_away_with_them() throws IOException {
        Path script = templates.resolve("script/disclosure.js");
        publish(site);
        append(script);
        assertThat(publish(site).touched).containsExactly("site first", "site pages", "site search");
        append("studio.yaml", "take along: [one file, zip]\n");
        publish(site);
        append(script);
        assertThat(publish(site).touched).contains("make ebb", "make tide");
        Path fresh = Files.createTempDirectory(folder, "fresh").resolve("site");
        publish(fresh);
        assertThat(differing(site, fresh)).isEmpty();
    }

    /** One run: what it came to, and what of each case it did not take over from the run before. */
    private record Run(Publishing.Outcome outcome, Set<String> touched) {
    }

    private Run publish(Path into) {
        Watched stages = new Watched(ContentStages.open(content, Optional.of(templates), day));
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        Publishing.Outcome outcome = new Publishing(stages, day, 2,
                new Progress.Shown(nowhere, false, 80, System::nanoTime))
                .run(Map.of(Audience.EVERYBODY, into), stages.real.messages(), new Messages());
        return new Run(outcome, stages.touched);
    }

    private static void append(Path asset) throws IOException {
        Files.writeString(asset, "\n", StandardOpenOption.APPEND);
    }

    private void append(String file, String text) throws IOException {
        Files.writeString(content.resolve(file), text, StandardOpenOption.APPEND);
    }

    /** Paths of files that one site has and the other has not, or not with the same bytes. */
    private static Set<String> differing(Path one, Path other) throws IOException {
        Map<String, ByteBuffer> ours = files(one);
        Map<String, ByteBuffer> theirs = files(other);
        Set<String> paths = new TreeSet<>(ours.keySet());
        paths.addAll(theirs.keySet());
        paths.removeIf(path -> theirs.containsKey(path) && theirs.get(path).equals(ours.get(path)));
        return paths;
    }

    private static Map<String, ByteBuffer> files(Path site) throws IOException {
        Map<String, ByteBuffer> files = new TreeMap<>();
        Edits.snapshot(site).forEach((path, bytes) -> files.put(path.toString(), ByteBuffer.wrap(bytes)));
        return files;
    }

    /** The true stages, with a list of what went through them. */
    private static final class Watched implements Stages {

        private final ContentStages real;
        private final Set<String> touched = new ConcurrentSkipListSet<>();

        Watched(ContentStages real) {
            this.real = real;
        }

        @Override
        public String seed(String caseId) {
            return real.seed(caseId);
        }

        @Override
        public List<Audience> audiences() {
            return real.audiences();
        }

        @Override
        public List<Path> cases() {
            return real.cases();
        }

        @Override
        public Checked check(Path caseFolder) {
            touched.add("check " + caseFolder.getFileName());
            Checked checked = real.check(caseFolder);
            return new Checked() {
                @Override
                public Messages messages() {
                    return checked.messages();
                }

                @Override
                public String standing() {
                    return checked.standing();
                }

                @Override
                public Made make() {
                    touched.add("make " + caseFolder.getFileName());
                    return checked.make();
                }
            };
        }

        @Override
        public Optional<String> privateValues() {
            return real.privateValues();
        }

        @Override
        public Optional<Path> changed() {
            return real.changed();
        }

        @Override
        public PrivateScan newValues(String before) {
            return real.newValues(before);
        }

        @Override
        public WholeSite whole(Audience audience, List<CaseCard> cards) {
            return new WatchedSite(real.whole(audience, cards), touched);
        }
    }

    /** The true site, with a list of what was made of it. */
    private record WatchedSite(WholeSite real, Set<String> touched) implements WholeSite {

        @Override
        public String mark() {
            return real.mark();
        }

        @Override
        public Pages pages(Progress.Shown shown, Messages said) {
            touched.add("site pages");
            return real.pages(shown, said);
        }

        @Override
        public String searchMark() {
            return real.searchMark();
        }

        @Override
        public List<SiteFile> search(Found found, Messages said) {
            touched.add("site search");
            return real.search(found, said);
        }

        @Override
        public Optional<String> takenKey() {
            return real.takenKey();
        }

        @Override
        public TakenFiles taken(List<SiteFile> files, Messages said) {
            touched.add("site taken");
            return real.taken(files, said);
        }

        @Override
        public SiteFile first(TakenFiles taken, Messages said) {
            touched.add("site first");
            return real.first(taken, said);
        }

        @Override
        public Messages sources() {
            return real.sources();
        }
    }
}

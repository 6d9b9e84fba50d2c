package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.pack.EditionStopped;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TakenFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How cases go through the stages, with stages so small that what goes through them is plain to see. */
class PublishingTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    private Path folder;
    private Path content;
    private Path site;

    @BeforeEach
    void write_three_cases() throws IOException {
        content = Files.createDirectories(folder.resolve("content"));
        site = folder.resolve("site");
        for (String name : List.of("one", "two", "three")) {
            write(name, "the text of " + name);
        }
    }

    @Test
    void an_unchanged_case_is_neither_read_by_the_stages_nor_made_again() throws IOException {
        publish();
        write("two", "another text");
        SmallStages stages = new SmallStages();
        Publishing.Outcome outcome = publish(stages, DAY, 2);
        assertThat(stages.checked).containsExactly("two");
        assertThat(stages.made).containsExactly("two");
        assertThat(outcome.kept()).isEqualTo(2);
        assertThat(outcome.editions().get(0).written()).isEqualTo(1);
    }

    @Test
    void a_case_with_an_error_keeps_the_old_edition_and_every_other_case_is_still_checked() throws IOException {
        publish();
        Map<String, String> before = contents(site);
        write("one", "ERROR");
        write("two", "ERROR");
        Publishing.Outcome outcome = publish();
        assertThat(outcome.editions()).isEmpty();
        assertThat(outcome.told()).extracting(Told::file).hasSize(2);
        assertThat(contents(site)).isEqualTo(before);
    }

    @Test
    void what_was_said_about_an_unchanged_case_is_said_again() throws IOException {
        write("one", "WARNING");
        List<Told> first = publish().told();
        assertThat(first).hasSize(1);
        assertThat(publish().told()).isEqualTo(first);
    }

    @Test
    void on_another_day_a_case_is_checked_anew_and_made_anew_only_if_it_stands_otherwise() throws IOException {
        write("three", "until 2026-03-05");
        publish();
        SmallStages next = new SmallStages();
        assertThat(publish(next, DAY.plusDays(1), 2).kept()).isEqualTo(3);
        assertThat(next.checked).containsExactlyInAnyOrder("one", "two", "three");
        assertThat(next.made).isEmpty();
        SmallStages later = new SmallStages();
        publish(later, DAY.plusDays(3), 2);
        assertThat(later.made).containsExactly("three");
        assertThat(contents(site)).doesNotContainKey("cases/three/index.html");
    }

    @Test
    void a_failure_of_the_program_is_told_with_the_case_and_never_with_its_text() throws IOException {
        write("one", "CRASH on a secret");
        Publishing.Outcome outcome = publish();
        assertThat(outcome.editions()).isEmpty();
        assertThat(outcome.told()).singleElement().satisfies(told -> {
            assertThat(told.code()).isEqualTo("SITE-019");
            assertThat(told.file()).endsWith("cases/one/case.md");
            assertThat(told.text()).doesNotContain("secret").containsPattern("at PublishingTest\\.java:\\d+\\)");
        });
    }

    @Test
    void a_file_that_changes_while_it_is_read_stops_the_edition() throws IOException {
        publish();
        Map<String, String> before = contents(site);
        write("one", "CHANGES");
        Publishing.Outcome outcome = publish();
        assertThat(outcome.told()).extracting(Told::code).containsExactly("SITE-007");
        assertThat(contents(site)).isEqualTo(before);
    }

    @Test
    void a_disk_that_fails_stops_the_run_with_the_old_edition_whole() throws IOException {
        publish();
        Map<String, String> before = contents(site);
        write("one", "DISK");
        assertThatThrownBy(this::publish).isInstanceOfSatisfying(EditionStopped.class,
                stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-006"));
        assertThat(contents(site)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void after_any_edits_an_incremental_edition_equals_a_full_one(long seed) throws IOException {
        Random random = new Random(seed);
        LocalDate day = DAY;
        for (int round = 0; round < 15; round++) {
            edit(random);
            day = day.plusDays(random.nextInt(3));
            Publishing.Outcome incremental = publish(new SmallStages(), day, 1 + random.nextInt(4));
            Path fresh = folder.resolve("fresh-" + round);
            Path kept = site;
            site = fresh;
            Publishing.Outcome full = publish(new SmallStages(), day, 1 + random.nextInt(4));
            site = kept;
            assertThat(incremental.told()).isEqualTo(full.told());
            if (full.isNew()) {
                assertThat(contents(site)).isEqualTo(contents(fresh));
            }
        }
    }

    private void edit(Random random) throws IOException {
        for (int edits = random.nextInt(4); edits > 0; edits--) {
            String name = List.of("one", "two", "three", "four", "five").get(random.nextInt(5));
            switch (random.nextInt(6)) {
                case 0 -> remove(content.resolve("cases").resolve(name));
                case 1 -> write(name, "WARNING " + random.nextInt(2));
                case 2 -> write(name, random.nextInt(4) == 0 ? "ERROR" : "other words");
                case 3 -> write(name, "until 2026-03-0" + (3 + random.nextInt(6)));
                case 4 -> {
                    write(name, "with data");
                    Files.writeString(content.resolve("cases/" + name + "/data.csv"), "n," + random.nextInt(2));
                }
                default -> write(name, "text " + random.nextInt(3));
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private void write(String name, String text) throws IOException {
        Path file = content.resolve("cases").resolve(name).resolve("case.md");
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Publishing.Outcome publish() {
        return publish(new SmallStages(), DAY, 2);
    }

    private Publishing.Outcome publish(SmallStages stages, LocalDate day, int threads) {
        stages.day = day;
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        return new Publishing(stages, day, threads, new Progress.Shown(nowhere, false, 80, System::nanoTime))
                .run(Map.of(Audience.EVERYBODY, site), new Messages(), new Messages());
    }

    private static Map<String, String> contents(Path site) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        if (Files.exists(site)) {
            try (Stream<Path> all = Files.walk(site)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    contents.put(site.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return contents;
    }

    /** A case is a line of text; its page shows the line and its data. */
    private final class SmallStages implements Stages {

        private final Set<String> checked = ConcurrentHashMap.newKeySet();
        private final Set<String> made = ConcurrentHashMap.newKeySet();
        private LocalDate day = DAY;

        @Override
        public String seed(String caseId) {
            return "seed";
        }

        @Override
        public List<Audience> audiences() {
            return List.of(Audience.EVERYBODY);
        }

        @Override
        public List<Path> cases() {
            try (Stream<Path> folders = Files.list(content.resolve("cases"))) {
                return folders.sorted().toList();
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }

        @Override
        public Checked check(Path caseFolder) {
            String id = caseFolder.getFileName().toString();
            checked.add(id);
            String text = read(caseFolder.resolve("case.md"));
            if (text.equals("DISK")) {
                throw new UncheckedIOException(new IOException("the disk is gone"));
            }
            Messages messages = new Messages();
            Place place = Place.file(caseFolder.resolve("case.md").toString());
            if (text.startsWith("ERROR")) {
                messages.add(EditionMessages.LINK_TO_NOTHING.at(place, "link", text));
            } else if (text.startsWith("WARNING")) {
                messages.add(EditionMessages.CHANGED_BY_HAND.at(place, "path", text, "done", "said"));
            }
            boolean open = !text.startsWith("until ") || day.isBefore(LocalDate.parse(text.substring(6)));
            return new Checked() {
                @Override
                public Messages messages() {
                    return messages;
                }

                @Override
                public String standing() {
                    return String.valueOf(open);
                }

                @Override
                public Made make() {
                    return made(caseFolder, id, text, open);
                }
            };
        }

        private Made made(Path caseFolder, String id, String text, boolean open) {
            made.add(id);
            if (text.startsWith("CRASH")) {
                throw new IllegalStateException(text);
            }
            if (text.equals("CHANGES")) {
                try {
                    Files.writeString(caseFolder.resolve("case.md"), "changed in the meantime");
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            }
            String path = "cases/" + id + "/index.html";
            Path data = caseFolder.resolve("data.csv");
            String page = "<a href=\"../../index.html\">up</a>" + text + (Files.exists(data) ? read(data) : "");
            CaseCard card = new CaseCard(id, text, "", "en", "", "", "", List.of(), List.of(), List.of(), List.of(), "", "",
                    List.of(), List.of(), open ? List.of(path) : List.of(), List.of(), "", List.of(), List.of(),
                    CaseCard.LastChange.NONE, List.of(), "");
            return new Made(Map.of(Audience.EVERYBODY,
                    new Part(open ? List.of(SiteFile.text(path, page)) : List.of(), card)), new Messages());
        }

        private String read(Path file) {
            try {
                return Files.readString(file);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }

        @Override
        public Optional<String> privateValues() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> changed() {
            return Optional.empty();
        }

        @Override
        public PrivateScan newValues(String before) {
            return PrivateScan.ofAll(Map.of(), "");
        }

        @Override
        public WholeSite whole(Audience audience, List<CaseCard> cards) {
            return new SmallSite(cards);
        }
    }

    /** A first page that leads to each case, and nothing else. */
    private record SmallSite(List<CaseCard> cards) implements WholeSite {

        @Override
        public String mark() {
            return cards.toString();
        }

        @Override
        public Pages pages(Progress.Shown shown, Messages said) {
            return new Pages(List.of(), Found.NOTHING);
        }

        @Override
        public String searchMark() {
            return mark();
        }

        @Override
        public List<SiteFile> search(Found found, Messages said) {
            return List.of();
        }

        @Override
        public Optional<String> takenKey() {
            return Optional.empty();
        }

        @Override
        public TakenFiles taken(List<SiteFile> files, Messages said) {
            return TakenFiles.none();
        }

        @Override
        public SiteFile first(TakenFiles taken, Messages said) {
            StringBuilder page = new StringBuilder("<h1>all</h1>");
            cards.forEach(card -> page.append("<a href=\"").append(card.path()).append("\">").append(card.id())
                    .append("</a>"));
            return SiteFile.text("index.html", page.toString());
        }

        @Override
        public Messages sources() {
            return new Messages();
        }
    }
}

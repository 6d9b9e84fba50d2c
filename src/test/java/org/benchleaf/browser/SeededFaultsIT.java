package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Plants faults in copies of real pages and looks whether the rule that should see each does.
 *
 * <p>A fault is seen if the rule tells something of the changed page that it does not tell of the page as it is.
 */
class SeededFaultsIT {

    /** Of the kinds that other checkers miss; two may slip through, as no rule sees everything. */
    private static final int FEWEST_SEEDS = 40;
    private static final int MOST_MISSED = 2;

    private static SiteUnderTest site;
    private static Window window;

    @BeforeAll
    static void copyTheSite() throws IOException {
        Path copy = Files.createDirectories(Path.of("target", "browser", "seeded")).toRealPath();
        Path from = SiteUnderTest.demo().root();
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = copy.resolve(from.relativize(file));
                Files.createDirectories(to.getParent());
                Files.copy(file, to, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.writeString(copy.resolve("assets/seeded-bold.css"), ".seeded-bold { font-weight: 700 }");
        site = SiteUnderTest.at(copy);
        window = Window.on(copy);
    }

    @AfterAll
    static void close() {
        window.close();
    }

    @Test
    void at_most_two_of_the_planted_faults_are_missed() throws IOException {
        List<Seed> seeds = Seeds.all();
        List<String> missed = new ArrayList<>();
        StringBuilder told = new StringBuilder("Planted faults:\n");
        for (Seed seed : seeds) {
            Optional<String> seen = seen(seed);
            told.append(seen.isPresent() ? "  seen    " : "  MISSED  ").append(seed.topic()).append(": ").append(seed.name())
                    .append(" [").append(seed.rule()).append("] ").append(seen.orElse("")).append('\n');
            if (seen.isEmpty()) {
                missed.add(seed.name());
            }
        }
        told.append(seeds.size() - missed.size()).append(" of ").append(seeds.size()).append(" were seen.");
        System.out.println(told);
        assertThat(seeds).hasSizeGreaterThanOrEqualTo(FEWEST_SEEDS);
        assertThat(missed).hasSizeLessThanOrEqualTo(MOST_MISSED);
    }

    /** What the rule says of the changed page and not of the page as it is. */
    private static Optional<String> seen(Seed seed) throws IOException {
        Optional<WrittenPage> home = site.pages().stream().filter(page -> page.has(seed.on()))
                .min(Comparator.comparingLong(page -> site.size(page.path())));
        if (home.isEmpty()) {
            return Optional.empty();
        }
        WrittenPage before = home.get();
        Set<String> usual = new HashSet<>(told(seed, before));
        WrittenPage changed = planted(seed, before);
        try {
            return told(seed, changed).stream().filter(what -> !usual.contains(what)).findFirst();
        } finally {
            Files.delete(site.root().resolve(changed.path()));
        }
    }

    private static List<String> told(Seed seed, WrittenPage page) {
        Optional<PageRule> written = RuleBook.ofPages(site).stream().filter(rule -> rule.name().equals(seed.rule())).findFirst();
        if (written.isPresent()) {
            return written.get().faults(page).stream().map(Fault::what).toList();
        }
        Optional<SiteRule> ofSite = RuleBook.ofTheSite().stream().filter(rule -> rule.name().equals(seed.rule())).findFirst();
        if (ofSite.isPresent()) {
            return ofSite.get().faults().apply(site.and(page)).filter(fault -> fault.page().equals(page.path()))
                    .map(Fault::what).toList();
        }
        LiveRule live = RuleBook.inTheBrowser().stream().filter(rule -> rule.name().equals(seed.rule())).findFirst()
                .orElseThrow(() -> new IllegalStateException("no rule is called " + seed.rule()));
        return window.surviving(() -> {
            window.show(seed.setting());
            window.open(page.path());
            return live.faults(window).stream().map(Fault::what).toList();
        });
    }

    private static WrittenPage planted(Seed seed, WrittenPage before) throws IOException {
        WrittenPage changed = before.copy(before.path().replaceFirst("[^/]*$", "seeded.html"));
        seed.plant().accept(changed.html());
        String up = "../".repeat((int) before.path().chars().filter(letter -> letter == '/').count());
        changed.find("link[href=seeded-bold.css]").attr("href", up + "assets/seeded-bold.css");
        // A name of its own: the browser would take a file of the same second for the one that it knows.
        String asset = "assets/" + seed.name().replaceAll("[^a-z]+", "-");
        if (seed.css().isPresent()) {
            Files.writeString(site.root().resolve(asset + ".css"), seed.css().get());
            changed.html().head().append("<link rel=\"stylesheet\" href=\"" + up + asset + ".css\">");
        }
        if (seed.js().isPresent()) {
            Files.writeString(site.root().resolve(asset + ".js"), "(function () {\n" + seed.js().get() + "\n}());");
            changed.html().head().append("<script defer src=\"" + up + asset + ".js\"></script>");
        }
        Files.writeString(site.root().resolve(changed.path()), changed.html().outerHtml());
        return changed;
    }

    @Test
    void every_kind_of_fault_that_other_checkers_miss_is_planted() {
        assertThat(Seeds.all().stream().map(Seed::topic).collect(Collectors.toSet())).contains("alt quality",
                "chart-table equality", "caption presence", "announcement counts", "status regions", "focus outline",
                "obscured focus", "colour-only meaning", "reflow", "text spacing", "language of parts", "direction",
                "moving content", "drag-only controls", "repeated link text", "titles", "hover-only text", "border contrast",
                "step lists", "quantity against vessel size", "pictogram alt", "navigate-on-change", "text over pictures",
                "bold fake headings");
    }
}

package org.benchleaf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Confidential;
import org.benchleaf.publish.SiteFile;
import org.commonmark.testutil.TestResources;
import org.commonmark.testutil.example.ExampleReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * How many mentions of private facts are found, and how often something is found where nothing private stands. Facts are made by
 * chance of the common names of sixteen languages (Datafaker) and of telephone numbers of eighteen countries, written by Google's
 * libphonenumber.
 */
class RecallTest {

    private static final int FACTS = Integer.getInteger("benchleaf.facts", 2160);
    private static final int FACTS_FOR_FALSE_ALARMS = FACTS / 40;
    private static final int SHORTEST_ALONE = 3;
    /**
     * For each kind. Measured: all but 1 of 62,243; missed is an ordinary word whose capital hides behind a particle
     * ("the D'amicos").
     */
    private static final double LEAST_FOUND = 0.999;
    /** Of the pairs of a fact and a file. Measured: 5 of 82,296. */
    private static final double MOST_FALSE = 0.0005;

    private static List<SampleFact> facts;

    @BeforeAll
    static void make_facts() {
        Random random = new Random(7);
        SampleFact.Kind[] kinds = SampleFact.Kind.values();
        SampleLanguage[] languages = SampleLanguage.values();
        facts = IntStream.range(0, FACTS).mapToObj(at -> SampleFact.of(kinds[at % kinds.length],
                languages[at / kinds.length % languages.length], random)).toList();
    }

    @Test
    void every_kind_of_fact_is_found_however_it_is_mentioned() {
        Map<SampleFact.Kind, int[]> found = new EnumMap<>(SampleFact.Kind.class);
        List<String> missed = new ArrayList<>();
        for (int at = 0; at < facts.size(); at++) {
            SampleFact fact = facts.get(at);
            boolean always = at / SampleFact.Kind.values().length % 2 == 0;
            PrivateScan scan = scan(fact, always);
            assertThat(scan.messages().all()).as("%s", fact.secret().parts()).isEmpty();
            for (Mention mention : fact.mentions()) {
                if (mention.isBare() && !isFoundAlone(fact, always)) {
                    continue;
                }
                boolean isFound = !scan.scan(Searchable.of(mention.file())).isEmpty();
                found.computeIfAbsent(fact.kind(), kind -> new int[2])[isFound ? 0 : 1]++;
                if (!isFound) {
                    missed.add(fact.kind() + ", " + mention.way() + ": " + fact.secret().parts() + " in "
                            + new String(mention.file().bytes(), StandardCharsets.UTF_8));
                }
            }
        }
        tell(found, missed);
        assertThat(found).hasSize(SampleFact.Kind.values().length).allSatisfy((kind, counts) ->
                assertThat(counts[0] / (double) (counts[0] + counts[1])).as("%s: missed %s", kind,
                        missed.stream().filter(one -> one.startsWith(kind.name())).toList()).isGreaterThanOrEqualTo(LEAST_FOUND));
    }

    @Test
    void hardly_anything_is_found_where_nothing_private_stands() {
        List<Searchable> files = Stream.concat(DemoSite.made().files().stream(), commonMark()).map(Searchable::of).toList();
        Map<String, Integer> alarms = new TreeMap<>();
        int pairs = 0;
        for (SampleFact fact : facts.subList(0, FACTS_FOR_FALSE_ALARMS)) {
            PrivateScan scan = scan(fact, false);
            for (Searchable file : files) {
                pairs++;
                scan.scan(file).forEach(said -> alarms.merge(fact.kind() + " " + fact.secret().parts(), 1, Integer::sum));
            }
        }
        if (Boolean.getBoolean("benchleaf.told")) {
            System.out.println(pairs + " pairs, false alarms: " + alarms);
        }
        assertThat(alarms.values().stream().mapToInt(Integer::intValue).sum() / (double) pairs).as("%s", alarms)
                .isLessThanOrEqualTo(MOST_FALSE);
    }

    @Test
    void a_name_that_is_an_ordinary_word_is_asked_about() {
        SampleFact brown = new SampleFact(SampleFact.Kind.ONE_NAME, Confidential.Secret.plain("owner", "Ada Brown",
                Place.file("case.md")), List.of(), List.of());
        assertThat(scan(brown, false).messages().all()).extracting(Message::id).containsExactly(LeakMessages.ORDINARY_WORD);
    }

    private static Stream<SiteFile> commonMark() {
        return ExampleReader.readExamples(TestResources.getSpec()).stream().flatMap(example -> Stream.of(
                SiteFile.text("example.md", example.getSource()), SiteFile.text("example.html", example.getHtml())));
    }

    /** What is an ordinary word too was answered to be one, or is too short to be looked for by itself. */
    private static boolean isFoundAlone(SampleFact fact, boolean always) {
        return words(fact).allMatch(name -> always && NameWords.isOrdinary(name)
                || !NameWords.isOrdinary(name) && (name.length() >= SHORTEST_ALONE || NameScripts.isEastAsian(name)));
    }

    /** The names in folded letters, and each word of them. */
    private static Stream<String> words(SampleFact fact) {
        return fact.names().stream().flatMap(name -> Stream.concat(Stream.of(name), Stream.of(name.split("[\\s'’-]+"))
                .filter(part -> !NameWords.PARTICLES.contains(Folded.letters(part)))))
                .map(Folded::letters).filter(word -> !word.isEmpty()).distinct();
    }

    /** The scan for a fact whose author has answered for each ordinary word in it. */
    private static PrivateScan scan(SampleFact fact, boolean always) {
        List<Confidential.Secret> secrets = new ArrayList<>(List.of(fact.secret()));
        words(fact).filter(word -> NameWords.isOrdinary(word)).forEach(name ->
                secrets.add(new Confidential.Secret(always ? "always names" : "ordinary words", Map.of("word", name),
                        Place.file("case.md"))));
        return PrivateScan.ofCase("tide", new Confidential(secrets), "");
    }

    private static void tell(Map<SampleFact.Kind, int[]> found, List<String> missed) {
        if (Boolean.getBoolean("benchleaf.told")) {
            found.forEach((kind, counts) -> System.out.println(kind + ": found " + counts[0] + ", missed " + counts[1]));
            missed.forEach(System.out::println);
        }
    }
}

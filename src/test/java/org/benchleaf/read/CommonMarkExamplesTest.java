package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Story;
import org.benchleaf.publish.WrittenText;
import org.commonmark.testutil.TestResources;
import org.commonmark.testutil.example.Example;
import org.commonmark.testutil.example.ExampleReader;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.owasp.html.HtmlChangeListener;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/**
 * Every example of the CommonMark specification 0.31.2 (MacFarlane 2024) and of GitHub's 0.29 as the story of a case. The
 * OWASP Java HTML Sanitizer is the yardstick for what comes out: it must find nothing to take away.
 */
class CommonMarkExamplesTest {

    /** What a story may hold by the house's rules: words and their order, and links of the kinds that are printed. */
    private static final PolicyFactory HARMLESS = new HtmlPolicyBuilder()
            .allowElements("p", "ul", "ol", "li", "em", "strong", "code", "pre", "blockquote", "hr", "br", "h3", "h4", "h5",
                    "h6", "table", "thead", "tbody", "tr", "th", "td", "a")
            .allowWithoutAttributes("a")
            .allowAttributes("href", "title").onElements("a")
            .allowAttributes("start").onElements("ol")
            .allowUrlProtocols("http", "https", "mailto")
            .toFactory();

    private static String facts;

    @BeforeAll
    static void read_the_facts_of_a_sound_case() throws IOException {
        String whole = Files.readString(Path.of("src/test/resources/sound/base/cases/tide/case.md"));
        facts = whole.substring(0, whole.indexOf("\n---\n", 4) + 5);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_becomes_harmless_html_or_a_message_with_its_place(Example example) {
        Messages messages = new Messages();
        Story story = story(example, messages);
        assertThat(taken(story)).as(() -> html(story)).isEmpty();
        int first = (int) facts.lines().count() + 1;
        int last = first + (int) example.getSource().lines().count();
        assertThat(messages.all()).allSatisfy(message -> {
            assertThat(message.place().line()).isBetween(first, last);
            assertThat(message.place().column()).isPositive();
            assertThat(message.place().text().line(message.place().line()).length() + 1)
                    .isGreaterThanOrEqualTo(message.place().column());
        });
    }

    /** Links as the specification prints them; HTML is text here, and the parser keeps letters that need no escape. */
    @ParameterizedTest
    @MethodSource("examplesWithoutHtml")
    void no_link_is_lost_without_a_message(Example example) {
        Messages messages = new Messages();
        Story story = story(example, messages);
        boolean refused = messages.all().stream().map(Message::code).anyMatch("READ-024"::equals);
        assertThat(refused ? List.of() : links(html(story))).isEqualTo(refused ? List.of() : links(example.getHtml()));
    }

    @Test
    void the_examples_are_all_there() {
        assertThat(examples()).hasSizeGreaterThan(1300);
    }

    static List<Example> examples() {
        return Stream.of(TestResources.getSpec(), TestResources.getGfmSpec())
                .flatMap(spec -> ExampleReader.readExamples(spec).stream()).toList();
    }

    static List<Example> examplesWithoutHtml() {
        return ExampleReader.readExamples(TestResources.getSpec()).stream()
                .filter(example -> !example.getSource().matches("(?s).*<[a-zA-Z/!?].*"))
                // The parser follows an older edition here: a definition above a line of signs became a heading then.
                .filter(example -> !example.getSource().matches("(?s)\\[foo]: /url\n(bar\n)?=+\n.*")).toList();
    }

    private static Story story(Example example, Messages messages) {
        String text = facts + example.getSource();
        return StoryReader.read(new Lines(new SourceText("case.md", text), text), text, facts.length(), messages);
    }

    private static String html(Story story) {
        return story.sections().stream().map(Story.Section::text).map(WrittenText::of).collect(Collectors.joining("\n"));
    }

    private static List<String> links(String html) {
        return Jsoup.parseBodyFragment(html).select("a[href]").stream()
                .map(link -> URLDecoder.decode(link.attr("href").replace("+", "%2B"), StandardCharsets.UTF_8)).toList();
    }

    private static List<String> taken(Story story) {
        List<String> taken = new ArrayList<>();
        HARMLESS.sanitize(html(story), new HtmlChangeListener<List<String>>() {
            @Override
            public void discardedTag(List<String> list, String element) {
                list.add(element);
            }

            @Override
            public void discardedAttributes(List<String> list, String element, String... attributes) {
                list.add(element + " " + String.join(" ", attributes));
            }
        }, taken);
        return taken;
    }
}

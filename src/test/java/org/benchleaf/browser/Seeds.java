package org.benchleaf.browser;

import static org.benchleaf.browser.Seed.inScript;
import static org.benchleaf.browser.Seed.inStyle;
import static org.benchleaf.browser.Seed.inText;

import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Faults of the kinds that common checkers do not see, each as it might slip into a template, a style or a case. */
final class Seeds {

    private static final Setting PAPER = new Setting(768, Setting.Look.PRINT);
    private static final String SOMETHING = "main p";

    private Seeds() {
    }

    static List<Seed> all() {
        return Stream.of(ofPictures(), ofTablesAndCharts(), ofStatus(), ofFocus(), ofLook(), ofLanguage(), ofMotion(),
                ofControls(), ofLinksAndTitles(), ofSteps(), ofFiles()).flatMap(List::stream).toList();
    }

    private static List<Seed> ofPictures() {
        return List.of(
                inText("alt quality", "an alt that is the file's name", "alt says what is seen", "figure img",
                        page -> page.selectFirst("figure img").attr("alt", "before-recto-960.jpg")),
                inText("alt quality", "an alt that begins 'Image of'", "alt says what is seen", "figure img",
                        page -> page.selectFirst("figure img").attr("alt", "Image of the sheet before treatment.")),
                inText("alt quality", "an alt of a whole paragraph", "alt says what is seen", "figure img",
                        page -> page.selectFirst("figure img").attr("alt", "The sheet lies on felt. ".repeat(9))),
                inText("alt quality", "one alt for both pictures of a pair", "no two pictures with one alt",
                        ".comparison img", page -> page.select(".comparison img").attr("alt", "The sheet, seen from the front.")),
                inText("alt quality", "an alt that is the caption again", "alt is not the caption", "figure:has(figcaption) img",
                        page -> {
                            Element figure = page.selectFirst("figure:has(figcaption):has(img)");
                            figure.selectFirst("img").attr("alt", figure.selectFirst("figcaption").text());
                        }),
                inText("pictogram alt", "a pictogram without a name", "pictograms are named with their code",
                        "[class*=pictogram] svg, svg[class*=pictogram], img[src~=(?i)ghs0], img[class*=pictogram]", page -> {
                            page.select("[class*=pictogram] svg title, svg[class*=pictogram] title").remove();
                            page.select("[class*=pictogram] svg, svg[class*=pictogram]").removeAttr("aria-label");
                            page.select("img[src~=(?i)ghs0], [class*=pictogram] img").attr("alt", "");
                        }),
                inStyle("text over pictures", "a caption drawn up over its picture", "no text over pictures",
                        "figure:has(img):has(figcaption)", "figcaption { position: relative; margin-block-start: -5rem }"),
                inStyle("text over pictures", "a picture behind the text", "no text over pictures", "h1",
                        "h1 { background-image: url('data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=') }"));
    }

    private static List<Seed> ofTablesAndCharts() {
        return List.of(
                inText("caption presence", "a table without a caption", "tables have captions", "table caption",
                        page -> page.selectFirst("table caption").remove()),
                inText("caption presence", "a figure without a caption", "figures have captions", "figure figcaption",
                        page -> page.selectFirst("figure figcaption").remove()),
                inText("chart-table equality", "a drawn value that its table does not have", "chart equals its table",
                        "svg[data-table] [data-value]", page -> page.selectFirst("svg[data-table] [data-value]")
                                .attr("data-value", "987.6")),
                inText("chart-table equality", "a mark on the map that its list does not have", "map marks equal their list",
                        ".condition-map svg text", page -> page.selectFirst(".condition-map svg text").text("42")));
    }

    private static List<Seed> ofStatus() {
        return List.of(
                inScript("announcement counts", "a search that speaks at every letter", "search speaks once", "[data-search]", """
                        const line = document.querySelector("[role=status]");
                        document.querySelector("[data-search] input").addEventListener("input",
                          event => { line.textContent = "searching for " + event.target.value; });
                        """),
                inScript("announcement counts", "a timer that speaks every minute", "timers speak little", "[data-timer]", """
                        const line = document.querySelector("[data-timer] [role=status]");
                        setInterval(() => { line.textContent = "still going, " + Date.now(); }, 60000);
                        """),
                inText("status regions", "a search whose findings are told nowhere", "status lines are ready", "[data-search]",
                        page -> page.select("[role=status]").removeAttr("role")),
                inText("status regions", "a status line that is an output element", "status lines are ready", "[role=status]",
                        page -> page.selectFirst("[role=status]").tagName("output")));
    }

    private static List<Seed> ofFocus() {
        return List.of(
                inStyle("focus outline", "no outline on focus", "focus is seen", "[data-search]",
                        "*:focus-visible { outline: none }"),
                inStyle("focus outline", "a pale outline on focus", "focus is seen", "[data-search]",
                        "*:focus-visible { outline: 2px solid #e6dfd2 }"),
                inStyle("focus outline", "a hair for an outline", "focus is seen", "[data-search]",
                        "*:focus-visible { outline-width: 1px }"),
                inStyle("obscured focus", "a bar that covers the foot of the window", "focus is not obscured", "[data-search]",
                        "body > header { position: fixed; inset: auto 0 0 0; block-size: 55vh; background: #fff; z-index: 9 }"),
                inStyle("obscured focus", "a head that stays", "no fixed bars", SOMETHING,
                        "body > header { position: sticky; inset-block-start: 0 }"),
                inText("focus outline", "a button that no key reaches", "keyboard reaches all", "[data-search]",
                        page -> page.selectFirst("main").append("<span role=\"button\">Open the sheet</span>")));
    }

    private static List<Seed> ofLook() {
        return List.of(
                inStyle("colour-only meaning", "links told by colour alone", "links by more than colour", "main p a:not(nav a)",
                        "main a { text-decoration: none }"),
                inText("colour-only meaning", "a caution without its word", "meaning is in words too",
                        "[class~=--(danger|care)\\b] strong", page -> page.select("[class~=--(danger|care)\\b] strong").remove()),
                inStyle("reflow", "a column that does not give way", "no sideways scroll", SOMETHING,
                        "main { inline-size: 40rem }").seen(Setting.PHONE),
                inText("reflow", "a wide table without its frame", "wide tables scroll in a named frame", "table",
                        page -> page.selectFirst("table").parent().unwrap()),
                inScript("text spacing", "paragraphs of a fixed height", "room for wide spacing", ".prose p", """
                        document.querySelectorAll("main p").forEach(p => {
                          p.style.blockSize = p.getBoundingClientRect().height + "px"; p.style.overflow = "hidden"; });
                        """).seen(Setting.PHONE),
                inScript("text spacing", "a heading that may not break", "room for wide spacing", "h1", """
                        document.querySelector("h1").style.whiteSpace = "nowrap";
                        document.querySelector("h1").textContent = "Sheets, washing and drying at the bench of the studio";
                        """).seen(new Setting(768, Setting.Look.LIGHT)),
                inStyle("border contrast", "a button with a pale edge", "border contrast", "main button",
                        "button { border-color: #e6dfd2; background: #faf6ee }"),
                inStyle("border contrast", "a field without an edge", "border contrast", "main input:not([type=range])",
                        "input { border: 0; background: transparent }").seen(new Setting(320, Setting.Look.DARK)),
                inText("bold fake headings", "a heading that is a bold line", "headings are marked as headings", "main h2",
                        page -> {
                            Element heading = page.selectFirst("main h2");
                            heading.after("<p><strong>" + heading.text() + "</strong></p>").remove();
                        }),
                inText("bold fake headings", "a heading that is a line drawn bold", "no bold fake headings", "main h2", page -> {
                    Element heading = page.selectFirst("main h2");
                    heading.after("<p class=\"seeded-bold\">Before you begin</p>").remove();
                    page.head().append("<link rel=\"stylesheet\" href=\"seeded-bold.css\">");
                }));
    }

    private static List<Seed> ofLanguage() {
        return List.of(
                inText("language of parts", "a German sentence not marked", "foreign words carry their language", SOMETHING,
                        append("<p>Das Blatt wird auf die Folie gelegt und mit der Nebelflasche leicht befeuchtet.</p>")),
                inText("language of parts", "a Hebrew word not marked", "foreign words carry their language", SOMETHING,
                        append("<p>The stamp reads \u05d0\u05d5\u05e6\u05e8 in violet ink.</p>")),
                inText("language of parts", "an English page that says it is French", "foreign words carry their language",
                        SOMETHING, page -> page.selectFirst("html").attr("lang", "fr")),
                inText("direction", "right-to-left text without its direction", "direction is marked", SOMETHING,
                        append("<p lang=\"he\">\u05d0\u05d5\u05e6\u05e8</p>")),
                inText("direction", "a quantity not set apart in right-to-left text", "direction is marked", SOMETHING,
                        append("<p lang=\"he\" dir=\"rtl\">\u05de\u05d9\u05dd 250 mL \u05e7\u05e8\u05d9\u05dd</p>")));
    }

    private static List<Seed> ofMotion() {
        return List.of(
                inStyle("moving content", "a heading that pulses", "nothing moves by itself", "h1",
                        "@keyframes pulse { to { opacity: 0.4 } } h1 { animation: pulse 1s infinite alternate }"),
                inScript("moving content", "pictures that take turns", "nothing moves by itself", "h1", """
                        let turn = 0;
                        setInterval(() => { document.querySelector("h1").dataset.turn = ++turn; }, 4000);
                        """),
                inText("moving content", "a line that runs", "nothing plays or moves", SOMETHING,
                        append("<marquee>New cases every month</marquee>")));
    }

    private static List<Seed> ofControls() {
        return List.of(
                inText("drag-only controls", "a card that can only be dragged", "no drag only controls", SOMETHING,
                        append("<div draggable=\"true\" tabindex=\"0\">Drag this card to the tray</div>")),
                inScript("drag-only controls", "a slider without its buttons", "no drag only controls", "[data-compare]", """
                        document.querySelectorAll("[data-compare] button").forEach(button => button.remove());
                        """),
                inScript("drag-only controls", "a handle that hears the pointer alone", "no drag only controls", "h1", """
                        document.querySelector("h1").addEventListener("pointerdown", () => {});
                        """),
                new Seed("a list that leaves the page when it is set", "navigate-on-change", "no leaving on change", SOMETHING,
                        Setting.DESK, append("<p><label>Case <select id=\"seeded\"><option>One</option><option>Two</option>"
                                + "</select></label></p>"), java.util.Optional.empty(), java.util.Optional.of(
                                "document.getElementById('seeded').addEventListener('change', () => { location.href = 'index.html'; });")),
                inScript("navigate-on-change", "a field that sends its form at the first letter", "no leaving on change",
                        "[data-search]", """
                        document.querySelector("[data-search] input").addEventListener("input",
                          () => document.querySelector("[data-search]").submit());
                        """),
                inStyle("control size", "buttons for a mouse", "control size", "main button",
                        "button { min-block-size: 0; padding: 2px; align-self: start }"));
    }

    private static List<Seed> ofLinksAndTitles() {
        return List.of(
                inText("repeated link text", "two links of one name", "one link text, one target", SOMETHING,
                        append("<p><a href=\"glossary.html\">Open the page</a> <a href=\"sources.html\">Open the page</a></p>")),
                inText("ids before readers", "the id of a rule", "no id of a rule stands before readers", SOMETHING,
                        append("<p>The bath was warm (rule bath-above-60).</p>")),
                inText("repeated link text", "a link that says 'more'", "links make sense alone", SOMETHING,
                        append("<p>On washing: <a href=\"glossary.html\">more</a></p>")),
                inText("titles", "the title of another page", "titles are unlike each other", SOMETHING,
                        page -> page.title(SiteUnderTest.demo().pages().get(0).html().title())),
                inText("titles", "a title without the site's name", "the page is named", "h1", page -> page.title("Steps")),
                inText("hover-only text", "a warning in a tip", "no text waits for a hover", SOMETHING,
                        page -> page.selectFirst("main p").attr("title", "Wear gloves")),
                inStyle("hover-only text", "a note that a hover shows", "what a hover shows, the focus shows", SOMETHING,
                        ".tip { display: none } li:hover .tip { display: block }"));
    }

    private static List<Seed> ofSteps() {
        return List.of(
                inText("step lists", "steps typed as paragraphs", "steps are a list", "main ol > li", page -> {
                    Element list = page.selectFirst("main ol:has(> li)");
                    int number = 0;
                    for (Element step : list.select("> li")) {
                        list.before("<p>" + ++number + ". " + step.text().replace("<", "") + "</p>");
                    }
                    list.remove();
                }),
                inText("step lists", "steps counted in words", "steps are a list", SOMETHING,
                        append("<p>Step 3: Blot the sheet.</p>")),
                inText("quantity against vessel size", "more water than the beaker holds", "quantity fits its vessel", SOMETHING,
                        append("<p>Pour 600\u202fmL of water into a 250\u202fmL beaker.</p>")),
                inText("quantity against vessel size", "a bath larger than its tray", "quantity fits its vessel", SOMETHING,
                        append("<p>Put 8.1\u202fL into the medium tray, which holds 7.5\u202fL.</p>")));
    }

    private static List<Seed> ofFiles() {
        return List.of(
                inText("files", "a link from the root", "links work from a file", SOMETHING,
                        append("<p><a href=\"/glossary.html\">The glossary of this site</a></p>")),
                inText("files", "a script that is a module", "scripts work from a file", "script[src]",
                        page -> page.selectFirst("script[src]").attr("type", "module")),
                inText("files", "a picture from elsewhere", "policy kept", SOMETHING,
                        append("<p><img src=\"https://pictures.example/sheet.jpg\" width=\"10\" height=\"10\" alt=\"The sheet on "
                                + "felt.\"></p>")),
                inText("files", "a style in an element", "no style or script in an element", SOMETHING,
                        page -> page.selectFirst("main p").attr("style", "color: red")),
                inStyle("files", "closed parts that stay closed on paper", "closed parts print", "details",
                        "@media print { details:not([open])::details-content { content-visibility: hidden; block-size: 0 } }").seen(PAPER));
    }

    private static java.util.function.Consumer<Document> append(String html) {
        return page -> page.selectFirst("main").append(html);
    }
}

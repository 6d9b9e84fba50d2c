package org.benchleaf.browser;

import java.util.List;
import java.util.stream.Stream;

/** The rules that a browser must show, in the groups in which they are asked. */
final class LiveRules {

    private static final String AXE_RUN = Scripts.named("axe-run");

    static final LiveRule ACCESSIBILITY_LIBRARY = new LiveRule("accessibility library", "WCAG 2.2 A and AA, good practice",
            window -> window.textsLater(AXE_RUN, "all"));
    static final LiveRule COLOURS_BY_THE_LIBRARY = new LiveRule("accessibility library, colours", "1.4.3, 1.4.1",
            window -> window.textsLater(AXE_RUN, "colours"));
    static final LiveRule QUIET_CONSOLE = new LiveRule("quiet console", "house", Window::console);
    static final LiveRule NO_REQUEST_ELSEWHERE = new LiveRule("no request elsewhere", "house: works offline",
            Window::requestsElsewhere);
    static final LiveRule POLICY_KEPT = LiveRule.scripted("policy kept", "CSP level 3, Mozilla's and our own policy");
    static final LiveRule NO_SIDEWAYS_SCROLL = LiveRule.scripted("no sideways scroll", "1.4.10");
    static final LiveRule NO_TEXT_CUT_OFF = LiveRule.scripted("no text cut off", "1.4.4");
    static final LiveRule CONTROL_SIZE = LiveRule.scripted("control size", "2.5.8, house: 44 px");
    static final LiveRule BORDER_CONTRAST = LiveRule.scripted("border contrast", "1.4.11");
    static final LiveRule LINKS_BY_MORE_THAN_COLOUR = LiveRule.scripted("links by more than colour", "1.4.1");
    static final LiveRule NO_TEXT_OVER_PICTURES = LiveRule.scripted("no text over pictures", "1.4.3");
    static final LiveRule NO_BOLD_FAKE_HEADINGS = LiveRule.scripted("no bold fake headings", "1.3.1");
    static final LiveRule NOTHING_MOVES_BY_ITSELF = LiveRule.scripted("nothing moves by itself", "2.2.2");
    static final LiveRule NO_DRAG_ONLY_CONTROLS = LiveRule.scripted("no drag only controls", "2.5.7, 2.1.1");
    static final LiveRule NO_FIXED_BARS = LiveRule.scripted("no fixed bars", "2.4.11, house");
    static final LiveRule CLOSED_PARTS_PRINT = LiveRule.scripted("closed parts print", "house");
    static final LiveRule NO_LEAVING_ON_CHANGE = new LiveRule("no leaving on change", "3.2.2",
            window -> window.textsLater(Scripts.named("no-leaving-on-change")));
    static final LiveRule FOCUS_IS_SEEN = new LiveRule("focus is seen", "2.4.7, 1.4.11",
            window -> KeyboardTour.of(window).badOutlines());
    static final LiveRule FOCUS_IS_NOT_OBSCURED = new LiveRule("focus is not obscured", "2.4.11",
            window -> KeyboardTour.of(window).obscured());
    static final LiveRule KEYBOARD_REACHES_ALL = new LiveRule("keyboard reaches all", "2.1.1",
            window -> KeyboardTour.of(window).missed());
    static final LiveRule ROOM_FOR_WIDE_SPACING = new LiveRule("room for wide spacing", "1.4.12",
            window -> changedBy("wide-spacing", window));
    static final LiveRule ROOM_FOR_LARGE_TEXT = new LiveRule("room for large text", "1.4.4",
            window -> changedBy("large-text", window));

    static final LiveRule SEARCH_SPEAKS_ONCE = new LiveRule("search speaks once", "4.1.3, house",
            window -> window.textsLater(Scripts.named("search-speaks-once")));
    static final LiveRule TIMERS_SPEAK_LITTLE = new LiveRule("timers speak little", "2.2.1, 4.1.3, house: at most 6 messages",
            window -> window.textsLater(Scripts.named("timers-speak-little")));

    private LiveRules() {
    }

    private static List<String> changedBy(String change, Window window) {
        window.run(Scripts.named(change));
        List<String> found = LiveRule.faults(window, List.of(NO_SIDEWAYS_SCROLL, NO_TEXT_CUT_OFF)).stream().map(Fault::what).toList();
        window.run(Scripts.named("own-style-off"));
        return found;
    }

    /** Asked of every page as it opens. */
    static List<LiveRule> onOpening() {
        return List.of(QUIET_CONSOLE, NO_REQUEST_ELSEWHERE, POLICY_KEPT, NOTHING_MOVES_BY_ITSELF);
    }

    /** Asked wherever a page is laid out anew: at every width, on screen and on paper. */
    static List<LiveRule> ofEveryLayout() {
        return List.of(ACCESSIBILITY_LIBRARY);
    }

    /** Asked where only the colours are others than in a layout already seen. */
    static List<LiveRule> ofOtherColours() {
        return List.of(COLOURS_BY_THE_LIBRARY);
    }

    /** Asked of every look and width. */
    static List<LiveRule> inEverySetting() {
        return List.of(NO_SIDEWAYS_SCROLL, NO_TEXT_CUT_OFF, BORDER_CONTRAST, NO_FIXED_BARS,
                NO_TEXT_OVER_PICTURES);
    }

    /** Asked on a screen, whatever its colours. */
    static List<LiveRule> onScreen() {
        return List.of(CONTROL_SIZE, LINKS_BY_MORE_THAN_COLOUR, NO_BOLD_FAKE_HEADINGS, NO_DRAG_ONLY_CONTROLS);
    }

    /** Every rule, for the list of what is asked. */
    static List<LiveRule> all() {
        return Stream.of(onOpening(), ofEveryLayout(), ofOtherColours(), inEverySetting(), onScreen(),
                List.of(CLOSED_PARTS_PRINT, NO_LEAVING_ON_CHANGE, SEARCH_SPEAKS_ONCE, TIMERS_SPEAK_LITTLE,
                FOCUS_IS_SEEN, FOCUS_IS_NOT_OBSCURED, KEYBOARD_REACHES_ALL, ROOM_FOR_WIDE_SPACING, ROOM_FOR_LARGE_TEXT))
                .flatMap(List::stream).toList();
    }
}

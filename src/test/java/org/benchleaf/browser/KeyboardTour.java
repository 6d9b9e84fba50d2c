package org.benchleaf.browser;

import java.util.ArrayList;
import java.util.List;

/**
 * Walks a page with the Tab key, every closed part opened, from its start until the focus comes round. The page itself notes each
 * stop when the next key comes, so that many keys are pressed at a time: to ask after each takes longer than the page does.
 */
final class KeyboardTour {

    private static final int MOST_STOPS = 1500;
    private static final int KEYS_AT_A_TIME = 50;
    private static final String PREPARE = Scripts.named("where-the-focus-is");
    private static final String NOTE = Scripts.plain("note-each-stop");
    private static final String OPEN = Scripts.named("open-every-part");
    private static final String MISSED = Scripts.named("what-can-take-the-focus");
    private static final String AGAIN = Scripts.named("every-stop-again");

    private final List<String> badOutlines = new ArrayList<>();
    private final List<String> obscured = new ArrayList<>();
    private final List<String> missed = new ArrayList<>();
    private final Window window;

    private KeyboardTour(Window window) {
        this.window = window;
    }

    /** The tour of what the window shows. */
    static KeyboardTour of(Window window) {
        KeyboardTour tour = new KeyboardTour(window);
        window.run(OPEN);
        window.run(PREPARE);
        window.run(NOTE);
        boolean goesOn = true;
        for (int keys = 0; goesOn && keys < MOST_STOPS; keys += KEYS_AT_A_TIME) {
            window.pressTab(KEYS_AT_A_TIME);
            goesOn = Boolean.TRUE.equals(window.run("return window.__goesOn();"));
        }
        tour.badOutlines.addAll(window.texts("return window.__badOutlines;"));
        tour.obscured.addAll(window.texts("return window.__obscured;"));
        tour.missed.addAll(window.texts(MISSED));
        return tour;
    }

    /** What is wrong with the focus at the same stops in another setting, into which the window goes; no key is pressed. */
    List<String> faultsIn(Setting setting) {
        window.show(setting);
        return window.texts(AGAIN);
    }

    /** Stops whose focus cannot be seen well. */
    List<String> badOutlines() {
        return badOutlines;
    }

    /** Stops that lie under something or out of the window. */
    List<String> obscured() {
        return obscured;
    }

    /** Controls that the tour did not come to. */
    List<String> missed() {
        return missed;
    }
}

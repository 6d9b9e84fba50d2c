package org.benchleaf.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Walks a page with the Tab key, every closed part opened, from its start until the focus comes round. The key is held, since
 * letting it go at each of hundreds of stops takes as long as pressing it.
 */
final class KeyboardTour {

    private static final int TAB = 9;
    private static final int MOST_STOPS = 1500;
    private static final String PREPARE = Scripts.named("where-the-focus-is");
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
        Set<Integer> stops = new HashSet<>();
        for (int step = 0; step < MOST_STOPS; step++) {
            window.hold("Tab", TAB);
            JsonNode stop = window.value("__where()");
            if (stop.isNull() || !stops.add(stop.path("stop").asInt())) {
                break;
            }
            tour.note(stop);
        }
        tour.missed.addAll(window.texts(MISSED));
        return tour;
    }

    private void note(JsonNode stop) {
        for (JsonNode fault : stop.path("faults")) {
            String said = fault.asText();
            (said.startsWith("outline") ? badOutlines : obscured).add(stop.path("told").asText() + ": " + said);
        }
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

package org.benchleaf.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jsoup.Jsoup;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoSuchSessionException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.KeyInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/** One window of the browser, showing one page in one setting. */
final class Window implements AutoCloseable {

    /** Of every window, in CSS pixels. */
    static final int HEIGHT = 900;
    private static final Duration LONGEST_TO_OPEN = Duration.ofMinutes(1);
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path root;
    /** Read with each page before its own. */
    private final List<String> scripts = new ArrayList<>();
    private ChromeDriver driver;
    private Setting setting = Setting.DESK;
    private String path = "";

    private Window(Path root) {
        this.root = root;
    }

    /** A window of a fresh browser on the site in that folder, which reads those scripts with each page before its own. */
    static Window on(Path root, String... scripts) {
        Window window = new Window(root);
        window.scripts.add(Scripts.witness());
        window.scripts.addAll(List.of(scripts));
        window.start();
        return window;
    }

    private void start() {
        driver = Chromium.ofThisMachine().start();
        scripts.forEach(script -> tell("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script)));
        // As if it were always the one in front: beside another window its focus would not show.
        tell("Emulation.setFocusEmulationEnabled", Map.of("enabled", true));
        show(Setting.DESK);
    }

    /**
     * What a check of this window gives; once more in a fresh browser if the browser itself fell, which says nothing of
     * the page. A page that brings it down twice fails the check.
     */
    <T> T surviving(Supplier<T> check) {
        try {
            return check.get();
        } catch (WebDriverException fell) {
            if (!isOfTheBrowser(fell)) {
                throw fell;
            }
            System.out.println("The browser fell at " + place() + " and was started again: " + fell.getRawMessage());
            close();
            start();
            return check.get();
        }
    }

    private static boolean isOfTheBrowser(WebDriverException failed) {
        return failed instanceof NoSuchSessionException || failed.getRawMessage().contains("tab crashed");
    }

    /** Opens a page from its file. */
    void open(String page) {
        open(page, "");
    }

    /** Opens a page with what follows its name, such as a question. */
    void open(String page, String rest) {
        forget();
        go(page, rest);
    }

    /** Opens a page without clearing the browser's logs, which are slow to read. */
    void go(String page, String rest) {
        path = page;
        leave(() -> driver.get(root.resolve(page).toUri() + rest));
    }

    /** Opens a page that a server of this machine serves. */
    void visit(String address) {
        path = address;
        leave(() -> driver.get(address));
    }

    /** Loads the same page again. */
    void again() {
        leave(() -> driver.navigate().refresh());
    }

    /** Waits until an expression of the page holds; how long that takes is the machine's affair. */
    void until(String holds) {
        long latest = System.nanoTime() + LONGEST_TO_OPEN.toNanos();
        while (!Boolean.TRUE.equals(run("return !!(" + holds + ");"))) {
            if (System.nanoTime() > latest) {
                throw new IllegalStateException(place() + ": not in " + LONGEST_TO_OPEN.toSeconds() + " s: " + holds);
            }
        }
    }

    /** Waits until another page stands there: the driver now and then comes back while the one before still does. */
    private void leave(Runnable move) {
        run("window.__left = true;");
        move.run();
        long latest = System.nanoTime() + LONGEST_TO_OPEN.toNanos();
        while (!Boolean.TRUE.equals(run("return !window.__left && document.readyState === 'complete';"))) {
            if (System.nanoTime() > latest) {
                throw new IllegalStateException(path + " did not open in " + LONGEST_TO_OPEN.toSeconds() + " s");
            }
        }
    }

    private void forget() {
        driver.manage().logs().get(LogType.BROWSER);
        driver.manage().logs().get(LogType.PERFORMANCE);
    }

    /** Shows what is open as another reader sees it. */
    void show(Setting wanted) {
        setting = wanted;
        tell("Emulation.setDeviceMetricsOverride",
                Map.of("width", wanted.width(), "height", HEIGHT, "deviceScaleFactor", 1, "mobile", false));
        tell("Emulation.setEmulatedMedia", wanted.look().emulation());
    }

    /** Whether this page was opened last. */
    boolean shows(String page) {
        return path.equals(page);
    }

    /** Lets pages run their scripts, or not, from the next opening on. */
    void letScriptsRun(boolean allowed) {
        tell("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
    }

    /** The page with the setting, for a report. */
    String place() {
        return path + " (" + setting + ")";
    }

    /** What a script gives back. */
    Object run(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** The texts that a script gives back. */
    List<String> texts(String script, Object... arguments) {
        return ((List<?>) driver.executeScript(script, arguments)).stream().map(String::valueOf).toList();
    }

    /** The lists of texts that a script gives back. */
    List<List<String>> lists(String script) {
        return ((List<?>) driver.executeScript(script)).stream()
                .map(list -> ((List<?>) list).stream().map(String::valueOf).toList()).toList();
    }

    /** The texts that a script hands to its last argument, which is a function, when it is done. */
    List<String> textsLater(String script, Object... arguments) {
        return ((List<?>) driver.executeAsyncScript(script, arguments)).stream().map(String::valueOf).toList();
    }

    /** The value of an expression that gives JSON; quicker to ask than a script. */
    JsonNode value(String expression) {
        Map<?, ?> answer = (Map<?, ?>) driver.executeCdpCommand("Runtime.evaluate",
                Map.of("expression", expression, "returnByValue", true)).get("result");
        try {
            return JSON.readTree(String.valueOf(answer.get("value")));
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(expression + " gave " + answer, broken);
        }
    }

    /** Presses and lets go a key that has a name, such as Tab or Enter. */
    void press(String key, int code) {
        stroke("rawKeyDown", key, code);
        if (key.equals("Enter")) {
            tell("Input.dispatchKeyEvent", Map.of("type", "char", "key", key, "text", "\r"));
        }
        stroke("keyUp", key, code);
    }

    /** Presses the key that moves the focus on, so many times, and lets it go. */
    void pressTab(int times) {
        KeyInput keyboard = new KeyInput("keyboard");
        Sequence keys = new Sequence(keyboard, 0);
        for (int time = 0; time < times; time++) {
            keys.addAction(keyboard.createKeyDown(Keys.TAB.charAt(0)));
        }
        driver.perform(List.of(keys.addAction(keyboard.createKeyUp(Keys.TAB.charAt(0)))));
    }

    private void stroke(String type, String key, int code) {
        tell("Input.dispatchKeyEvent", Map.of("type", type, "key", key, "code", key,
                "windowsVirtualKeyCode", code, "nativeVirtualKeyCode", code));
    }

    /** Types text where the focus is. */
    void type(String text) {
        tell("Input.insertText", Map.of("text", text));
    }

    /** What the browser's console said since the page was opened. */
    List<String> console() {
        return StreamSupport.stream(driver.manage().logs().get(LogType.BROWSER).spliterator(), false)
                .map(LogEntry::getMessage).toList();
    }

    /** The addresses that were asked for since the page was opened and that are not files of this machine. */
    List<String> requestsElsewhere() {
        return StreamSupport.stream(driver.manage().logs().get(LogType.PERFORMANCE).spliterator(), false)
                .flatMap(entry -> address(entry.getMessage()))
                .filter(address -> !address.startsWith("file:") && !address.startsWith("data:")).distinct().toList();
    }

    private static Stream<String> address(String event) {
        if (!event.contains("Network.requestWillBeSent\"") && !event.contains("Network.webSocketCreated")) {
            return Stream.of();
        }
        try {
            JsonNode told = JSON.readTree(event).at("/message/params");
            return Stream.of(told.at("/request/url").asText(told.path("url").asText()));
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("the browser's log cannot be read", broken);
        }
    }

    /** The page as it stands now, after its scripts ran. */
    WrittenPage asItStands() {
        return new WrittenPage(path, Jsoup.parse((String) run("return document.documentElement.outerHTML;")), true);
    }

    private void tell(String command, Map<String, Object> how) {
        driver.executeCdpCommand(command, how);
    }

    /** Asks something else of the browser by its protocol. */
    Map<String, Object> ask(String command, Map<String, Object> how) {
        return driver.executeCdpCommand(command, how);
    }

    @Override
    public void close() {
        driver.quit();
    }
}

package org.benchleaf.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * The browser of this machine with the program that drives it.
 *
 * <p>Both are looked for where {@code BENCHLEAF_CHROMIUM} and {@code BENCHLEAF_CHROMEDRIVER} say, then on the path, then
 * where Debian puts them. On a Debian machine that lets us, missing ones are installed. Elsewhere the checks fail and
 * say what to install: they are never left out.
 */
final class Chromium {

    private static final String WHAT_TO_INSTALL = "The checks in a browser need Chromium and its driver: "
            + "install them (Debian: apt-get install chromium chromium-driver) or name them in "
            + "BENCHLEAF_CHROMIUM and BENCHLEAF_CHROMEDRIVER.";
    private static final List<String> BROWSER_NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final List<String> DRIVER_NAMES = List.of("chromedriver", "chromium.chromedriver");
    /** The accessibility library takes ten seconds on the longest page of a busy machine. */
    private static final long MINUTES_FOR_A_SCRIPT = 3;

    /** The driver's developer commands are sent as they are, so that no match for the browser's version is needed. */
    private static final Logger LOG = Logger.getLogger("org.openqa.selenium.devtools");

    static {
        LOG.setLevel(Level.SEVERE);
    }

    private final Path browser;
    private final Path driver;

    private Chromium(Path browser, Path driver) {
        this.browser = browser;
        this.driver = driver;
    }

    /** The browser of this machine; installs it where that is possible, before anyone else looks for it. */
    static synchronized Chromium ofThisMachine() {
        return found().or(() -> {
            Programs.installOnDebian("chromium", "chromium-driver");
            return found();
        }).orElseThrow(() -> new IllegalStateException(WHAT_TO_INSTALL));
    }

    private static Optional<Chromium> found() {
        return program("BENCHLEAF_CHROMIUM", BROWSER_NAMES).flatMap(browser ->
                program("BENCHLEAF_CHROMEDRIVER", DRIVER_NAMES).map(driver -> new Chromium(browser, driver)));
    }

    private static Optional<Path> program(String variable, List<String> names) {
        String said = System.getenv(variable);
        return said != null && !said.isBlank() ? Optional.of(Path.of(said)).filter(Files::isExecutable) : Programs.found(names);
    }

    /** A fresh browser with an empty profile, which asks nothing of the network by itself. */
    ChromeDriver start() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.toFile());
        options.addArguments("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
                "--force-device-scale-factor=1", "--lang=en");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.toFile()).usingAnyFreePort().build();
        ChromeDriver started = new ChromeDriver(service, options);
        started.manage().timeouts().scriptTimeout(Duration.ofMinutes(MINUTES_FOR_A_SCRIPT));
        return started;
    }
}

package batchwright.report.html;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A browser without a window. {@code .ci/run} installs it; without it a test that asks for it is skipped, unless the system property
 * {@code batchwright.cross-checks} is {@code required}.
 */
public final class Browser implements AutoCloseable {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final boolean REQUIRED = "required".equals(System.getProperty("batchwright.cross-checks"));

    private static final Logger QUIET = Logger.getLogger("org.openqa.selenium");

    private final ChromeDriver driver;
    private final Path folder;

    private Browser(ChromeDriver driver, Path folder) {
        this.driver = driver;
        this.folder = folder;
    }

    public static Browser start(Path folder) {
        assumeTrue(
                REQUIRED || (Files.exists(BROWSER) && Files.exists(DRIVER)),
                "Chromium is not there: apt-get install chromium chromium-driver");
        // It would say at length that it does not know this version of the browser; what is used here has no version.
        QUIET.setLevel(Level.SEVERE);
        var options = new ChromeOptions();
        options.setBinary(BROWSER.toFile());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage");
        var logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        return new Browser(new ChromeDriver(service, options), folder);
    }

    /** @param dark whether the reader likes it dark */
    Browser open(String html, int width, boolean dark) throws IOException {
        Path file = folder.resolve("report.html");
        Files.writeString(file, html);
        return go(file.toUri().toString(), width, dark);
    }

    /** Opens an address. */
    public Browser go(String address, int width, boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
        media("", dark);
        driver.get(address);
        return this;
    }

    /** For what a hand does: keys and clicks. */
    public WebDriver driver() {
        return driver;
    }

    /** The whole page, however long, as a picture. */
    public byte[] picture() {
        Map<String, Object> answer = driver.executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
        return Base64.getDecoder().decode((String) Objects.requireNonNull(answer.get("data")));
    }

    /** @param medium print, or empty for the screen */
    public void media(String medium, boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        medium,
                        "features",
                        List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    }

    public Object run(String script) {
        return Objects.requireNonNull(driver.executeScript(script));
    }

    /** A script that answers later, by calling its last argument. */
    public Object runLater(String script) {
        return Objects.requireNonNull(driver.executeAsyncScript(script));
    }

    /** Whether the connection is lost. */
    public void offline(boolean lost) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", lost, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    /** What the browser complained of since it was asked before. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    byte[] pdf() {
        Map<String, Object> answer = driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        return Base64.getDecoder().decode((String) Objects.requireNonNull(answer.get("data")));
    }

    @Override
    public void close() {
        driver.quit();
    }
}

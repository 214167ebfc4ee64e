package runtrue.cli.browser;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LoggingPreferences;

/** The Chromium of this machine, without a window, showing one page from disk. Tests are skipped where there is none. */
public final class Browser implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final Pattern ASKED = Pattern.compile("\"Network.requestWillBeSent\".*?\"url\":\"([^\"]+)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Starts it; skips the test with a message where browser or driver is missing. */
    public static Browser start(String... flags) {
        Optional<Path> browser =
                NAMES.stream().flatMap(n -> program(n).stream()).findFirst();
        Optional<Path> controller = program("chromedriver");
        Assumptions.assumeTrue(
                browser.isPresent() && controller.isPresent(),
                "no Chromium with its driver on this machine (packages chromium and chromium-driver)");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toFile());
        // Its sandbox refuses to start as root, as builds in containers run; only pages made here are opened.
        options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage");
        options.addArguments("--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader");
        options.addArguments(flags);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable("browser", Level.ALL);
        logs.enable("performance", Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        return new Browser(new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(controller.orElseThrow().toFile())
                        .usingAnyFreePort()
                        .build(),
                options));
    }

    private static Optional<Path> program(String name) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Opens a page at a size of screen and waits until it is made. */
    public void open(Path page, int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
        driver.get(page.toUri().toString());
        waitUntil("the page is made", () -> "true".equals(run("return document.documentElement.dataset.ready")));
    }

    /** Runs a script; for what a reader would look at. */
    public Object run(String script, Object... arguments) {
        return String.valueOf(driver.executeScript(script, arguments));
    }

    public List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    public WebElement one(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    public String text(String selector) {
        return one(selector).getText();
    }

    /** Presses keys wherever the focus is. */
    public void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    public void tab() {
        press(Keys.TAB);
    }

    public WebElement focused() {
        return driver.switchTo().activeElement();
    }

    public void waitUntil(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain until " + what);
            }
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError(e);
            }
        }
    }

    /** Errors and warnings that the browser has told since it was last asked. */
    public List<String> complaints() {
        return driver.manage().logs().get("browser").getAll().stream()
                .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** What was asked of anything but the page's own file and what it carries, since it was last asked. */
    public List<String> requests() {
        List<String> urls = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get("performance")) {
            ASKED.matcher(entry.getMessage().replace("\\/", "/"))
                    .results()
                    .map(m -> m.group(1))
                    .forEach(urls::add);
        }
        urls.removeIf(u -> u.startsWith("blob:") || u.startsWith("data:") || u.endsWith(".html"));
        return urls;
    }

    /** Colours within an element as it is shown. */
    public Set<Integer> colours(String selector) {
        byte[] picture = one(selector).getScreenshotAs(OutputType.BYTES);
        try {
            var image = ImageIO.read(new ByteArrayInputStream(picture));
            Set<Integer> colours = new HashSet<>();
            for (int x = 0; x < image.getWidth(); x += 2) {
                for (int y = 0; y < image.getHeight(); y += 2) {
                    colours.add(image.getRGB(x, y));
                }
            }
            return colours;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An element as it is shown, as PNG. */
    public byte[] picture(String selector) {
        return one(selector).getScreenshotAs(OutputType.BYTES);
    }

    @Override
    public void close() {
        driver.quit();
    }
}

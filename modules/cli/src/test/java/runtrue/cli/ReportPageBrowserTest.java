package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import runtrue.cli.browser.Browser;
import runtrue.report.page.ReportPage;
import runtrue.result.CheckResult;
import runtrue.result.Outcome;
import runtrue.result.json.ResultJson;

/** The pages of the sample drops in a real browser, from disk. */
@Tag("browser")
class ReportPageBrowserTest {
    private static final Path SAMPLES =
            Path.of(System.getProperty("runtrue.root", "../..")).resolve("sample-models");

    @TempDir
    static Path output;

    private static Browser browser;

    @BeforeAll
    static void all_samples_are_checked() {
        browser = Browser.start();
        CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH), "check", SAMPLES, "--output", output, "--quiet");
    }

    @AfterAll
    static void the_browser_ends() {
        if (browser != null) {
            browser.close();
        }
    }

    private static void open(String drop) {
        open(drop, 1440);
    }

    private static void open(String drop, int width) {
        browser.open(output.resolve(drop).resolve("report.html"), width, 900);
        browser.complaints();
        browser.requests();
    }

    @ParameterizedTest
    @CsvSource({
        "kiln-hall, 360",
        "kiln-hall, 820",
        "kiln-hall, 1440",
        "lock-office, 360",
        "tally-sheds, 360",
        "tally-sheds, 1440",
        "cart-shed, 820",
        "rope-walk, 360"
    })
    void opens_from_disk_without_a_complaint_a_request_or_a_sideways_scroll(String drop, int width) {
        browser.open(output.resolve(drop).resolve("report.html"), width, 900);
        browser.one("[data-tab=space]").click();
        browser.waitUntil(
                "the view in space is made",
                () -> !browser.all("[data-part=space] canvas").isEmpty());
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).isEmpty();
        assertThat(browser.run("return document.documentElement.scrollWidth - window.innerWidth"))
                .asString()
                .satisfies(over -> assertThat(Integer.parseInt(over)).isLessThanOrEqualTo(0));
    }

    @Test
    void the_worst_finding_and_its_place_stand_first() {
        open("kiln-hall");
        assertThat(browser.text(".worst"))
                .contains("falls at 1 deg", "critical", "grid on D, between 3 and 4", "Raise the ridge");
        browser.one(".worst button.main").click();
        assertThat(browser.text("[data-part=caption]")).contains("must be at least 2°");
        assertThat(browser.all(".drawing .plane.chosen")).hasSize(1);
    }

    @Test
    void what_is_different_since_an_earlier_check_is_told() {
        CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH.plusSeconds(86_400)),
                "check",
                SAMPLES.resolve("rope-walk"),
                "--set",
                "temperature_range=40K",
                "--since",
                output,
                "--output",
                output.resolve("later"),
                "--quiet");
        open("later/rope-walk", 820);
        assertThat(browser.text("[data-part=changes]"))
                .contains(
                        "Since the check of 1970-01-01T00:00:00Z", "Conforms now", "temperature_range: 75 K, now 40 K");
        assertThat(browser.complaints()).isEmpty();
        open("rope-walk");
        assertThat(browser.all("[data-part=changes]")).isEmpty();
    }

    @Test
    void what_was_not_assessed_is_told_beside_it() {
        open("tally-sheds");
        assertThat(browser.text(".open")).contains("building_height", "not read from the models");
        assertThat(browser.text("[data-part=gaps]")).contains("Elements that were not read");
    }

    @Test
    void a_chosen_finding_is_marked_on_the_plan_and_told_in_full() {
        open("kiln-hall");
        WebElement row = browser.all("button.row").stream()
                .filter(r -> r.getText().contains("The internal span"))
                .findFirst()
                .orElseThrow();
        row.click();
        assertThat(row.getAttribute("aria-expanded")).isEqualTo("true");
        assertThat(browser.text(".rows li.chosen .detail"))
                .contains("1000 mm over the limit", "Add a support line", "IfcMember", "Copy");
        assertThat(browser.all(".chosen-ring circle")).isNotEmpty();
        assertThat(browser.all(".drawing .plane.chosen")).hasSize(1);
        row.click();
        assertThat(browser.all(".chosen-ring circle")).isEmpty();
    }

    @Test
    void a_sign_on_the_plan_opens_its_finding() {
        open("kiln-hall");
        browser.all(".drawing g.finding").get(2).click();
        assertThat(browser.all(".rows li.chosen")).hasSize(1);
        assertThat(browser.text(".rows li.chosen .sign text")).isEqualTo("3");
    }

    @Test
    void the_list_filters_by_outcome_and_text_and_comes_back() throws IOException {
        CheckResult result = ResultJson.read(output.resolve("tally-sheds/result.json"));
        int all = result.findings().size();
        int open = result.findings(Outcome.NOT_ASSESSED).size();
        assertThat(open).isPositive().isLessThan(all);
        open("tally-sheds");
        assertThat(browser.all(".rows > li")).hasSize(all);
        browser.one(".toggle").click();
        assertThat(browser.all(".rows > li")).hasSize(open);
        assertThat(browser.text("[data-part=count]")).isEqualTo(open + " of " + all + " findings shown");
        browser.one("[data-filter=Text]").sendKeys("flat curved");
        assertThat(browser.all(".rows > li"))
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.getText()).contains("Flat stretch over the crown", "curved plane"));
        browser.all(".filter-grid button").get(0).click();
        assertThat(browser.all(".rows > li")).hasSize(all);
    }

    @Test
    void the_list_sorts() {
        open("lock-office");
        browser.run("const s = document.querySelector('[data-filter=Order]'); s.value = 'number';"
                + "s.dispatchEvent(new Event('change'))");
        List<Integer> numbers = browser.all(".rows > li .sign text").stream()
                .map(t -> Integer.valueOf(t.getText()))
                .toList();
        assertThat(numbers).hasSize(12).isSorted();
    }

    @Test
    void the_keyboard_reaches_the_findings_and_walks_them() {
        open("kiln-hall");
        browser.tab();
        assertThat(browser.focused().getText()).isEqualTo("Skip to the findings");
        browser.press(Keys.ENTER);
        WebElement focused = browser.focused();
        for (int i = 0; i < 12 && !"row".equals(focused.getAttribute("class")); i++) {
            browser.tab();
            focused = browser.focused();
        }
        browser.press(Keys.ENTER);
        assertThat(browser.text(".rows li.chosen")).contains("falls at 1 deg");
        browser.press(Keys.ARROW_DOWN);
        browser.press(Keys.ENTER);
        assertThat(browser.text(".rows li.chosen")).contains("zone F");
        assertThat(browser.all(".rows li.chosen")).hasSize(1);
    }

    @Test
    void the_keyboard_moves_plan_and_roof() {
        open("kiln-hall");
        String before = (String) browser.run("return document.querySelector('.drawing svg').getAttribute('viewBox')");
        browser.run("document.querySelector('[data-part=stage]').focus()");
        browser.press("+");
        assertThat(browser.run("return document.querySelector('.drawing svg').getAttribute('viewBox')"))
                .isNotEqualTo(before);
        browser.run("document.querySelector('[data-tab=plan]').focus()");
        browser.press(Keys.ARROW_RIGHT);
        browser.waitUntil(
                "the view in space is made",
                () -> !browser.all("[data-part=space] canvas").isEmpty());
        browser.waitUntil(
                "the roof is drawn", () -> browser.colours("[data-part=space]").size() > 20);
        byte[] seen = browser.picture("[data-part=space]");
        browser.run("document.querySelector('[data-part=space] canvas').focus()");
        browser.press(Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        browser.waitUntil("the roof has turned", () -> !Arrays.equals(seen, browser.picture("[data-part=space]")));
    }

    @Test
    void a_chosen_finding_is_flown_to_in_space() {
        open("kiln-hall");
        browser.one("[data-tab=space]").click();
        browser.waitUntil(
                "the roof is drawn", () -> browser.colours("[data-part=space]").size() > 20);
        byte[] seen = browser.picture("[data-part=space]");
        browser.all("button.row").get(1).click();
        browser.waitUntil("the eye has moved", () -> !Arrays.equals(seen, browser.picture("[data-part=space]")));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void without_graphics_hardware_the_plan_still_serves() {
        try (Browser plain = Browser.start("--disable-3d-apis")) {
            plain.open(output.resolve("kiln-hall/report.html"), 1440, 900);
            plain.one("[data-tab=space]").click();
            plain.waitUntil(
                    "the page says so", () -> plain.text("[data-part=space]").contains("shows no 3D"));
            plain.one("[data-tab=plan]").click();
            plain.all("button.row").get(0).click();
            assertThat(plain.all(".chosen-ring circle")).isNotEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</script><script>window.hacked=1</script>",
                "<img src=x onerror=window.hacked=1>",
                "javascript:window.hacked=1",
                "\"><svg onload=window.hacked=1>"
            })
    void hostile_names_are_shown_and_never_run(String name) throws IOException {
        String json = Files.readString(output.resolve("kiln-hall/result.json"));
        Path hostile = output.resolve("hostile.json");
        Files.writeString(hostile, json.replace("south plane", name.replace("\"", "\\\"")), StandardCharsets.UTF_8);
        Path page = output.resolve("hostile.html");
        try (OutputStream out = Files.newOutputStream(page)) {
            ReportPage.write(ResultJson.read(hostile), out);
        }
        browser.complaints();
        browser.requests();
        browser.open(page, 1440, 900);
        browser.all("button.row").get(1).click();
        browser.one("[data-tab=space]").click();
        assertThat(browser.run("return window.hacked")).isEqualTo("null");
        assertThat(browser.text("[data-part=rows]")).contains(name);
        assertThat(browser.text("[data-part=planes]")).contains(name);
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).isEmpty();
    }
}

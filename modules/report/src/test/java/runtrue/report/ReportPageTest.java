package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.report.drawing.RoofPlan;
import runtrue.report.drawing.RoofPlans;
import runtrue.report.page.ReportPage;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReportPageTest {
    private static final Pattern BLOCK = Pattern.compile("(?s)<script[^>]*>(.*?)</script>");
    private static final Pattern DATA =
            Pattern.compile("(?s)<script type=\"application/json\" data-block=\"result\">(.*?)</script>");

    private static String page(CheckResult result) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ReportPage.write(result, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static JsonNode data(String page) {
        Matcher block = DATA.matcher(page);
        assertThat(block.find()).isTrue();
        return new JsonMapper().readTree(block.group(1));
    }

    /** What a browser takes for markup: all but the insides of scripts and styles. */
    private static String markup(String page) {
        return BLOCK.matcher(page).replaceAll("").replaceAll("(?s)<style>.*?</style>", "");
    }

    private static List<JsonNode> list(JsonNode parent, String name) {
        return StreamSupport.stream(parent.get(name).spliterator(), false).toList();
    }

    @Test
    void whatChangedIsThereWhereAnEarlierResultWasComparedWith() throws IOException {
        assertThat(data(page(MillLane.result())).has("changes")).isFalse();
        JsonNode changes =
                data(page(InventedGable.drop(1).since(MillLane.result()))).get("changes");
        assertThat(list(changes, "findings"))
                .extracting(f -> f.get("kind").asString())
                .startsWith("new")
                .endsWith("gone");
        assertThat(list(changes, "planes")).isNotEmpty();
    }

    @Test
    void everyFindingIsThereOnce() throws IOException {
        CheckResult result = MillLane.result();
        assertThat(list(data(page(result)), "findings"))
                .extracting(f -> f.get("id").asString())
                .containsExactlyInAnyOrderElementsOf(
                        result.findings().stream().map(Finding::id).toList());
    }

    @Test
    void aFindingHasAllThatIsKnownOfIt() throws IOException {
        JsonNode finding = list(data(page(InventedGable.drop(1))), "findings").get(0);
        assertThat(finding.get("outcome").asString()).isEqualTo("does not conform");
        assertThat(finding.get("sign").asString()).isEqualTo("1");
        assertThat(finding.get("plane").asInt()).isZero();
        assertThat(finding.get("measured").toString()).isEqualTo("[3000,\"mm\"]");
        assertThat(finding.get("limit").toString()).isEqualTo("[2000,\"mm\"]");
        assertThat(finding.propertyNames())
                .contains("severity", "message", "cure", "source", "comparison", "grid", "files", "elements", "facts");
    }

    /** South plane: 12 m wide, rising 3 in 4 over 6 m; far-off coordinates are counted from its corner. */
    @Test
    void planesAreShapesInSpaceNearTheOrigin() throws IOException {
        JsonNode data = data(page(InventedGable.drop(1)));
        assertThat(data.get("origin").toString()).isEqualTo("[430000,5300000,5]");
        JsonNode plane = list(data, "planes").get(0);
        assertThat(plane.get("outline").toString()).isEqualTo("[0,0,0,12,0,0,12,4.8,3.6,0,4.8,3.6]");
        assertThat(list(plane, "holes")).hasSize(1);
        assertThat(plane.get("sheets")).hasSize(4 * 26);
        assertThat(list(plane, "supports")).hasSize(4);
    }

    @Test
    void theSameResultGivesTheSameBytes() throws IOException {
        assertThat(page(InventedGable.drop(2))).isEqualTo(page(InventedGable.drop(2)));
    }

    @Test
    void nothingInItAsksForAnythingElse() throws IOException {
        String page = page(InventedGable.drop(2));
        assertThat(markup(page))
                .doesNotContainPattern("(?i)\\s(src|action|srcset|poster|xlink:href)\\s*=")
                .doesNotContainPattern("(?i)href=\"(?!#|data:,)")
                .doesNotContainPattern("(?i)<(iframe|object|embed|link rel=\"stylesheet)");
        assertThat(page).contains("default-src 'none'").doesNotContain("unsafe-inline", "unsafe-eval");
    }

    @Test
    void thePolicyKnowsTheScriptAndTheStyleByTheirHashes() throws Exception {
        String page = page(InventedGable.drop(1));
        for (String element : List.of("script", "style")) {
            Matcher text = Pattern.compile("(?s)<" + element + ">(.*?)</" + element + ">")
                    .matcher(page);
            assertThat(text.find()).isTrue();
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(text.group(1).getBytes(StandardCharsets.UTF_8));
            assertThat(page)
                    .contains(element + "-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
            assertThat(text.find()).as("a second " + element).isFalse();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</script><script>alert(1)</script>",
                "<img src=x onerror=alert(1)>",
                "\"><svg onload=alert(1)>",
                "javascript:alert(1)",
                "<!--<script>",
                "]]></svg><style>*{display:none}</style>",
                "' onmouseover='alert(1)",
                "a\u2028b\u0000c\ud800"
            })
    void hostileNamesStayText(String name) throws IOException {
        String page = page(InventedGable.drop(1, "Hall / " + name));
        assertThat(list(data(page), "planes").get(0).get("name").asString()).isEqualTo("Hall / " + name);
        assertThat(elements(page)).isEqualTo(elements(page(InventedGable.drop(1, "Hall / plain"))));
        assertThat(markup(page)).doesNotContainPattern("<[^>]*\\son[a-z]+\\s*=");
        assertThat(BLOCK.matcher(page).results())
                .hasSize(Pattern.compile("(?i)</script")
                        .matcher(page)
                        .results()
                        .toList()
                        .size());
    }

    /** Kinds of elements in the markup: what a name has smuggled in would add to them. */
    private static Set<String> elements(String page) {
        return Pattern.compile("<([a-zA-Z!?][a-zA-Z-]*)")
                .matcher(markup(page))
                .results()
                .map(m -> m.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyDrawingStandsInItAsInItsOwnFile() throws IOException {
        CheckResult result = InventedGable.drop(3);
        String page = page(result);
        for (RoofPlan plan : RoofPlans.of(result)) {
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            plan.write(file);
            String svg = file.toString(StandardCharsets.UTF_8);
            assertThat(page).contains(svg.substring(svg.indexOf("<svg")));
        }
    }

    /** Names of drawings are made of what models say; those of the page hold a colon, which no name of a drawing does. */
    @Test
    void namesOfDrawingsAndOfThePageNeverMeet() throws IOException {
        List<String> ids = Pattern.compile(" id=\"([^\"]+)\"")
                .matcher(markup(page(InventedGable.drop(3))))
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(ids).doesNotHaveDuplicates().contains("P-s0", "P-s2", "page:findings");
    }

    @Test
    void aResultWithoutPlanesIsAPageToo() throws IOException {
        JsonNode data = data(page(InventedGable.drop(0)));
        assertThat(list(data, "planes")).isEmpty();
        assertThat(list(data, "plans")).isEmpty();
    }
}

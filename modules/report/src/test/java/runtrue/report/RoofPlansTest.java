package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Node;
import org.xmlunit.builder.Input;
import org.xmlunit.xpath.JAXPXPathEngine;
import runtrue.report.drawing.RoofPlan;
import runtrue.report.drawing.RoofPlans;
import runtrue.result.CheckResult;

class RoofPlansTest {
    private static final CheckResult GABLE = InventedGable.drop(1);

    @Test
    void aDrawingIsAsItWasLookedOver() throws IOException {
        Golden.assertMatches("roof-plan-1.svg", svg(RoofPlans.of(GABLE).get(0)));
    }

    @ParameterizedTest
    @CsvSource({
        "plane, 2",
        "sheet, 50",
        "support, 8",
        "penetration, 1",
        "long-span, 1",
        "finding, 2",
        "edge eave, 2",
        "edge verge, 4",
        "edge ridge, 1"
    })
    void showsAllThatTheResultHas(String kind, int count) throws IOException {
        assertThat(nodes(svg(RoofPlans.of(GABLE).get(0)), "//s:*[@class='" + kind + "']"))
                .hasSize(count);
    }

    @Test
    void namesItsThingsByTheIdsOfTheResultAndNoneTwice() throws IOException {
        List<String> ids = nodes(svg(RoofPlans.of(GABLE).get(0)), "//@id").stream()
                .map(Node::getNodeValue)
                .toList();
        assertThat(ids).contains("P-s0", "P-n0", "E-ridge0", "P-s0_L3", "P-s0_H1", "internal-span-1");
        assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
    }

    @Test
    void saysWhatItShowsInWordsToo() throws IOException {
        assertThat(texts(svg(RoofPlans.of(GABLE).get(0))))
                .contains("ridge 12.00", "eave 12.00", "verge 6.00", "3000 > 2000 mm")
                .contains("pitch 36.9° · 71.0 m²", "16 × 6.03", "2 × 3.05", "2 × 1.98", "1.00 × 1.00", "true north")
                .contains("Internal span: 3000 mm, at most 2000 mm", "Not assessed: 1 rule on south plane");
    }

    /** One metre of an eave of 12 m is 10 mm at 1:100; read off the drawing itself. */
    @Test
    void isTrueToItsScale() throws IOException {
        String svg = svg(RoofPlans.of(GABLE).get(0));
        assertThat(texts(svg)).contains("1:100 on A4");
        assertThat(nodes(svg, "/s:svg/@width").get(0).getNodeValue()).isEqualTo("297mm");
        assertThat(nodes(svg, "/s:svg/@viewBox").get(0).getNodeValue()).isEqualTo("0 0 297 210");
        String eave = nodes(svg, "//s:g[@id='E-P-s00']/s:path[1]/@d").get(0).getNodeValue();
        String[] xy = eave.substring(1).split("[ L]", -1);
        assertThat(Math.hypot(number(xy[2]) - number(xy[0]), number(xy[3]) - number(xy[1])))
                .isEqualTo(120);
    }

    @Test
    void theLegendHasWhatAppearsAndNothingElse() throws IOException {
        assertThat(texts(svg(RoofPlans.of(GABLE).get(0))))
                .contains("ridge", "eave", "verge", "span longer than allowed", "not assessed")
                .doesNotContain("valley", "hip", "box gutter", "conceded");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</title><script>alert(1)</script>",
                "a & b < c \"d\" 'e'",
                "bell \u0007 and half \ud800",
                "屋根 ]]> x"
            })
    void textOfAModelStaysText(String name) throws IOException {
        String svg = svg(RoofPlans.of(InventedGable.drop(1, name)).get(0));
        assertThat(nodes(svg, "//s:script")).isEmpty();
        String shown = name.replace('\u0007', '\ufffd').replace('\ud800', '\ufffd');
        assertThat(texts(svg)).anyMatch(t -> !t.isEmpty() && shown.startsWith(t.replaceAll("…$", "")));
    }

    @Test
    void nothingInItRunsOrIsFetched() throws IOException {
        String svg = svg(RoofPlans.of(GABLE).get(0));
        assertThat(svg).doesNotContain("href", "<script", "<image", "<style", "<foreignObject");
        assertThat(svg.replaceAll("url\\(#roof-plan-1-hatch\\)", "").replace("http://www.w3.org/2000/svg", ""))
                .doesNotContain("url(", "://");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-SA-u-nu-arab", "th-TH-u-nu-thai"})
    void isTheSameInEveryCountry(String country) throws IOException {
        String expected = svg(RoofPlans.of(GABLE).get(0));
        Locale own = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(country));
            assertThat(svg(RoofPlans.of(GABLE).get(0))).isEqualTo(expected);
        } finally {
            Locale.setDefault(own);
        }
    }

    @Test
    void roofsThatStandApartHaveADrawingEach() {
        assertThat(RoofPlans.of(InventedGable.drop(3)).stream().map(p -> p.name() + ": " + p.title()))
                .containsExactly(
                        "roof-plan-1: Hall, roof 1 of 3",
                        "roof-plan-2: Hall, roof 2 of 3",
                        "roof-plan-3: Hall, roof 3 of 3");
    }

    /** 200 gables have 400 planes and about 9,600 sheets, most of them on the last drawing. */
    @Test
    void aVeryLargeDropIsDrawnWithinBoundsAndSaysWhatIsLeftOut() throws IOException {
        List<RoofPlan> plans = RoofPlans.of(InventedGable.drop(200));
        assertThat(plans).hasSize(24);
        String last = svg(plans.get(23));
        assertThat(nodes(last, "//s:*[@class='plane']")).hasSize(400 - 2 * 23);
        assertThat(last.length()).isLessThan(3_000_000);
        assertThat(texts(last)).anyMatch(t -> t.contains("too many or too narrow"));
    }

    @Test
    void aResultWithoutPlanesHasNoDrawing() {
        assertThat(RoofPlans.of(InventedGable.drop(0))).isEmpty();
    }

    private static String svg(RoofPlan plan) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        plan.write(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static List<String> texts(String svg) {
        return nodes(svg, "//s:text").stream().map(Node::getTextContent).toList();
    }

    private static List<Node> nodes(String svg, String path) {
        JAXPXPathEngine engine = new JAXPXPathEngine();
        engine.setNamespaceContext(Map.of("s", "http://www.w3.org/2000/svg"));
        return StreamSupport.stream(
                        engine.selectNodes(path, Input.fromString(svg).build()).spliterator(), false)
                .toList();
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}

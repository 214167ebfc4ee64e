package runtrue.result.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.result.CheckResult;
import runtrue.result.ConcessionResult;
import runtrue.result.Conforming;
import runtrue.result.Counts;
import runtrue.result.Direction;
import runtrue.result.Finding;
import runtrue.result.GridLine;
import runtrue.result.HealthLine;
import runtrue.result.Importance;
import runtrue.result.InventedHall;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.Point;
import runtrue.result.ReadMethod;
import runtrue.result.RoofSystemInfo;
import runtrue.result.StatedValue;
import runtrue.result.ToleranceInfo;
import runtrue.roof.RoofTolerance;
import runtrue.roof.health.HealthLimit;
import runtrue.roof.stated.StatedTolerances;
import runtrue.rules.Quantity;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

class ResultBuilderTest {
    private final CheckResult result = ResultBuilder.build(InventedHall.input());
    private final PlaneResult plane = result.planes().get(0);

    @Test
    void coordinatesOfThePlaneAreMovedBackToTheWorld() {
        // Worked by hand: origin (430000, 5300000, 120) + frame (1, 2, 3) + 6 m up the fall (0.8, 0.6) = 4.8 and 3.6 m.
        assertThat(plane.frame().origin()).isEqualTo(new Point(430_001, 5_300_002, 123));
        assertThat(plane.outline())
                .containsExactlyInAnyOrder(
                        new Point(430_001, 5_300_002, 123),
                        new Point(430_011, 5_300_002, 123),
                        new Point(430_011, 5_300_006.8, 126.6),
                        new Point(430_001, 5_300_006.8, 126.6));
    }

    @Test
    void everyToleranceIsPrintedOnceWithItsReason() {
        assertThat(result.tolerances()).extracting(ToleranceInfo::name).doesNotHaveDuplicates();
        assertThat(result.tolerances()).extracting(ToleranceInfo::reason).doesNotContain("");
        assertThat(result.tolerances())
                .hasSize(Tolerances.class.getRecordComponents().length
                        + RoofTolerance.values().length
                        + StatedTolerances.class.getRecordComponents().length
                        + HealthLimit.values().length)
                .contains(new ToleranceInfo(
                        "contact level",
                        new Measure(20, "mm"),
                        "A support is packed or pressed down by this; farther off it is not touched."));
    }

    @Test
    void concessionsAreToldInWords() {
        assertThat(result.concessions())
                .containsExactly(new ConcessionResult(
                        "F-9",
                        "unknown",
                        "R. Aldous",
                        "RFI 27",
                        "2027-03-31",
                        "2450 mm",
                        "No finding of this drop has that id.",
                        "concessions.yaml:2"));
    }

    @Test
    void directionsAreNotMoved() {
        assertThat(plane.frame().up()).isEqualTo(new Direction(0, 0.8, 0.6));
    }

    @Test
    void theOutlineRunsCounterClockwiseSeenFromAboveHoweverItWasGiven() {
        double twiceArea = 0;
        for (int i = 0; i < plane.outline().size(); i++) {
            Point a = plane.outline().get(i);
            Point b = plane.outline().get((i + 1) % plane.outline().size());
            twiceArea += (a.xMetres() - 430_000) * (b.yMetres() - 5_300_000)
                    - (b.xMetres() - 430_000) * (a.yMetres() - 5_300_000);
        }
        assertThat(twiceArea / 2).isCloseTo(48, within(1e-6));
    }

    @Test
    void edgesSupportsAndZonesAreMovedBackToTheWorld() {
        assertThat(result.edges().get(0).to()).isEqualTo(new Point(430_011, 5_300_002, 123));
        assertThat(plane.supports().get(0).pieces().get(0).from()).isEqualTo(new Point(430_001, 5_300_002.8, 123.6));
        assertThat(result.bodies().get(0).zones().get(0).regions().get(0).outline())
                .contains(new Point(430_003, 5_300_003.6, 124.2));
    }

    @Test
    void placesOfFindingsAreInTheWorldAlreadyAndStayThere() {
        assertThat(result.findings().get(0).place()).contains(new Point(430_001, 5_300_002, 123));
    }

    @Test
    void gridLinesAreInTheWorldAlreadyAndStayThere() {
        assertThat(result.gridLines())
                .containsExactly(new GridLine(
                        "Grid", "B", List.of(new Point(430_000, 5_300_000, 120), new Point(430_012, 5_300_000, 120))));
    }

    @Test
    void pitchAndBearingsAreDegreesFrom0To360() {
        // Slope 3 in 4: 36.869898 degrees (the 3-4-5 triangle).
        assertThat(plane.pitchDegrees()).isEqualTo(36.869898);
        assertThat(plane.azimuthDegrees()).hasValue(180);
        assertThat(plane.azimuthTrueNorthDegrees()).hasValue(270);
    }

    @Test
    void lengthsAreRoundedToAMicrometreAndHaveNoNegativeZero() {
        assertThat(plane.sheets().get(0).lengthMetres()).isEqualTo(6.0);
        assertThat(1 / plane.spans().get(0).v().fromMetres()).isPositive();
    }

    @Test
    void smallQuantitiesKeepTheirDigits() {
        assertThat(result.roofSystem().values())
                .contains(new RoofSystemInfo.Value("expansion", new Measure(11.7e-6, "1/K")));
    }

    @Test
    void findingsComeInTheOrderInWhichToReadThem() {
        assertThat(result.findings())
                .extracting(Finding::outcome)
                .containsExactly(Outcome.DOES_NOT_CONFORM, Outcome.NOT_ASSESSED);
        assertThat(result.conforming()).extracting(Conforming::id).containsExactly("F-3");
    }

    @Test
    void notAssessedIsNeverCountedAsConforming() {
        assertThat(result.counts().total()).isEqualTo(new Counts.Outcomes(1, 1, 1, 0));
        assertThat(result.counts().rules()).contains(new Counts.RuleOutcomes("span", new Counts.Outcomes(1, 0, 1, 0)));
    }

    @Test
    void aRuleThatMetNoSubjectIsListedWithZeros() {
        assertThat(result.counts().rules()).contains(new Counts.RuleOutcomes("idle", new Counts.Outcomes(0, 0, 0, 0)));
    }

    @Test
    void aFindingWithoutElementsTakesStoreyAndFilesFromItsPlane() {
        Finding finding = result.findings(Outcome.NOT_ASSESSED).get(0);
        assertThat(finding.storey()).isEqualTo("Roof");
        assertThat(finding.files()).containsExactly("architecture.ifc");
        assertThat(finding.planeName()).isEqualTo("Hall / south plane");
    }

    @Test
    void elementsOfPlanesAndSupportsTellHowTheyWereRead() {
        assertThat(result.methods())
                .extracting(m -> m.element().globalId(), ReadMethod::role, ReadMethod::basis, ReadMethod::closed)
                .containsExactly(
                        tuple("1SlabSlabSlabSlabSlab0", "roof", "derived", true),
                        tuple("3Purlin", "support", "assumed", false));
        assertThat(result.methods().get(1).planes()).containsExactly("P-1");
    }

    @Test
    void aBodyMadeOfAMaterialUsageIsNoOrdinarySolid() {
        Shape.Body body = new Shape.Body(
                List.of(), true, Optional.empty(), "FootPrint", List.of("assumed from #5"), Shape.BUILT_IN, true);
        ReadMethod method = TrustMapping.method(InventedHall.read(body), "roof", Set.of("P-1"));
        assertThat(method.basis()).isEqualTo("assumed");
        assertThat(method.closed()).isTrue();
        assertThat(method.remarks()).containsExactly("assumed from #5");
    }

    @Test
    void aStatedValueStandsBesideTheDerivedOneInTheUnitThatPeopleRead() {
        StatedValue pitch = result.stated().get(0);
        assertThat(pitch.stated()).isEqualTo(new Measure(0, "deg"));
        assertThat(pitch.derived()).contains(new Measure(36.869898, "deg"));
        assertThat(pitch.tolerance()).contains(new Measure(0.5, "deg"));
        assertThat(pitch.verdict()).isEqualTo("contradicts");
        assertThat(pitch.remark()).startsWith("It states 0");
    }

    @Test
    void whatWasNotComparedSaysWhyAndHasNothingBesideIt() {
        StatedValue thickness = result.stated().get(1);
        assertThat(thickness.stated()).isEqualTo(new Measure(200, "mm"));
        assertThat(thickness.derived()).isEmpty();
        assertThat(thickness.tolerance()).isEmpty();
        assertThat(thickness.verdict()).isEqualTo("not compared");
        assertThat(thickness.remark()).isEqualTo("it is a surface");
    }

    @Test
    void healthIsSortedByImportanceWithNotesOfFilesAmongIt() {
        assertThat(result.health())
                .extracting(HealthLine::kind, HealthLine::importance)
                .containsExactly(
                        tuple("same-geometry", Importance.HIGH),
                        tuple("oddity", Importance.MEDIUM),
                        tuple("no-true-north", Importance.LOW));
        assertThat(result.health().get(0).items().get(0).element().globalId()).isEqualTo("1SlabSlabSlabSlabSlab0");
    }

    @Test
    void whatGaveNoPlaneIsListed() {
        assertThat(result.unplaced())
                .singleElement()
                .satisfies(u -> assertThat(u.reason()).startsWith("Lies under"));
    }

    @Test
    void cautionsBeginWithWhatThisDropLacks() {
        assertThat(result.cautions().get(0)).startsWith("1 element was not read");
        assertThat(result.cautions()).anyMatch(c -> c.startsWith("Wind"));
    }

    @ParameterizedTest
    @CsvSource({
        "1.25, mm, 1250",
        "0.0349065850398866, deg, 2",
        "1500, kPa, 1.5",
        "0.25, %, 25",
        "3, 1, 3",
        "0.3048, ft, 1"
    })
    void quantitiesAreStatedInTheirOwnUnit(double si, String unit, double value) {
        assertThat(Measures.of(new Quantity(si, unit))).isEqualTo(new Measure(value, unit));
    }

    @Test
    void anUnknownUnitIsRefusedWithThoseThatAreKnown() {
        assertThatThrownBy(() -> Measures.of(new Quantity(1, "furlong")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"furlong\"")
                .hasMessageContaining("kPa");
    }

    @Test
    void aNumberThatIsNoneIsRefused() {
        assertThatThrownBy(() -> Rounded.of(Double.NaN)).isInstanceOf(ArithmeticException.class);
    }

    @ParameterizedTest
    @CsvSource({"-90, 270", "-0.0000000001, 0", "360, 0", "359.9999999, 0", "725, 5"})
    void bearingsAreWrapped(double degrees, double bearing) {
        assertThat(Rounded.bearing(Math.toRadians(degrees))).isEqualTo(bearing);
    }
}

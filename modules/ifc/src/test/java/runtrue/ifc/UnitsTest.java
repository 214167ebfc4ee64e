package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of units: the international foot and inch of 1959 (0.3048 m, 25.4 mm), SI prefixes of the SI brochure. */
class UnitsTest {
    private static final String PROJECT = "#1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);";

    @ParameterizedTest
    @CsvSource({"$,1", ".MILLI.,0.001", ".CENTI.,0.01", ".DECI.,0.1", ".KILO.,1000", ".MICRO.,0.000001"})
    void readsPrefixesOfTheMetre(String prefix, double metres) {
        assertThat(units("#2=IFCUNITASSIGNMENT((#3));#3=IFCSIUNIT(*,.LENGTHUNIT.," + prefix + ",.METRE.);")
                        .length())
                .isEqualTo(metres);
    }

    @Test
    void squaresAndCubesThePrefixOfSquareAndCubicMetres() {
        Units units = units("#2=IFCUNITASSIGNMENT((#3,#4));"
                + "#3=IFCSIUNIT(*,.AREAUNIT.,.MILLI.,.SQUARE_METRE.);"
                + "#4=IFCSIUNIT(*,.VOLUMEUNIT.,.CENTI.,.CUBIC_METRE.);");

        assertThat(units.area()).isEqualTo(1e-6);
        assertThat(units.volume()).isEqualTo(1e-6);
    }

    @ParameterizedTest
    @CsvSource({"'INCH',0.0254", "'FOOT',0.3048", "'a name that misleads: METRE',0.3048"})
    void goesByTheFactorOfAConversionAndNotByItsName(String name, double metres) {
        Units units = units("#2=IFCUNITASSIGNMENT((#3));#3=IFCCONVERSIONBASEDUNIT(#9,.LENGTHUNIT.,'" + name + "',#4);"
                + "#4=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(" + metres + "),#5);"
                + "#5=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);");

        assertThat(units.length()).isEqualTo(metres);
    }

    @Test
    void followsConversionsOfConversions() {
        // A foot of 12 inches of 25.4 millimetres.
        Units units = units("#2=IFCUNITASSIGNMENT((#3));#3=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#4);"
                + "#4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(12.),#5);"
                + "#5=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'INCH',#6);"
                + "#6=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(25.4),#7);"
                + "#7=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);");

        assertThat(units.length()).isCloseTo(0.3048, within(1e-15));
    }

    @Test
    void readsDegreesByTheirFactor() {
        Units units = units("#2=IFCUNITASSIGNMENT((#3));#3=IFCCONVERSIONBASEDUNIT($,.PLANEANGLEUNIT.,'DEGREE',#4);"
                + "#4=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.017453292519943295),#5);"
                + "#5=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);");

        assertThat(units.planeAngle()).isEqualTo(Math.toRadians(1));
    }

    @Test
    void makesAreaAndVolumeOfTheLengthUnitWhereTheyAreNotStated() {
        Units units = units("#2=IFCUNITASSIGNMENT((#3));#3=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#4);"
                + "#4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#5);#5=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);");

        assertThat(units.area()).isCloseTo(0.09290304, within(1e-15));
        assertThat(units.volume()).isCloseTo(0.028316846592, within(1e-15));
    }

    @Test
    void notesWhatIsAssumedForMissingUnits() {
        IfcModel model = ModelText.model("IFC4", PROJECT + "#2=IFCUNITASSIGNMENT(());");

        assertThat(model.units()).isEqualTo(new Units(1, 1, 1, 1));
        assertThat(model.notes())
                .containsExactlyInAnyOrder(
                        "No length unit is stated; metres are assumed.",
                        "No plane angle unit is stated; radians are assumed.");
    }

    @Test
    void notesAContextDependentUnitAndGoesOn() {
        IfcModel model = ModelText.model(
                "IFC4", PROJECT + "#2=IFCUNITASSIGNMENT((#3));#3=IFCCONTEXTDEPENDENTUNIT(#4,.LENGTHUNIT.,'paces');");

        assertThat(model.notes())
                .anySatisfy(note -> assertThat(note).contains("#3 (IfcContextDependentUnit)", "not converted"));
    }

    @ParameterizedTest
    @CsvSource({"0.", "-1."})
    void refusesAConversionFactorThatIsNotPositive(String factor) {
        assertThatThrownBy(() -> units("#2=IFCUNITASSIGNMENT((#3));#3=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'X',#4);"
                        + "#4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(" + factor + "),#5);"
                        + "#5=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#4")
                .hasMessageContaining("above 0");
    }

    @Test
    void refusesAUnitThatIsDefinedByItself() {
        assertThatThrownBy(() -> units("#2=IFCUNITASSIGNMENT((#3));#3=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'X',#4);"
                        + "#4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(2.),#3);"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#3")
                .hasMessageContaining("defined by itself");
    }

    @Test
    void usesTheFirstOfSeveralProjectsAndNotesUnitsThatDiffer() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);
                #2=IFCUNITASSIGNMENT((#3));
                #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
                #11=IFCPROJECT('1',$,$,$,$,$,$,(),#12);
                #12=IFCUNITASSIGNMENT((#13));
                #13=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                """);

        assertThat(model.units().length()).isEqualTo(0.001);
        assertThat(model.notes())
                .anySatisfy(note -> assertThat(note).contains("2 projects", "#1 (IfcProject)"))
                .anySatisfy(note -> assertThat(note).contains("#11 (IfcProject) differ"));
    }

    @Test
    void notesAFileWithoutProject() {
        IfcModel model =
                ModelText.model("IFC4", "#2=IFCUNITASSIGNMENT((#3));#3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);");

        assertThat(model.units().length()).isEqualTo(0.001);
        assertThat(model.notes()).anySatisfy(note -> assertThat(note).contains("no project"));
    }

    private static Units units(String data) {
        return ModelText.model("IFC4", PROJECT + data).units();
    }
}

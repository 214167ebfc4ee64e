package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units here: millimetre, square foot, degree, kilogram, degree Celsius. */
class PropertiesTest {
    private static final String FILE = """
            #1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);
            #2=IFCUNITASSIGNMENT((#3,#4,#5,#6,#7,#100));
            #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
            #4=IFCCONVERSIONBASEDUNIT($,.AREAUNIT.,'SQUARE FOOT',#14);
            #14=IFCMEASUREWITHUNIT(IFCAREAMEASURE(0.09290304),#15);
            #15=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);
            #5=IFCCONVERSIONBASEDUNIT($,.PLANEANGLEUNIT.,'DEGREE',#16);
            #16=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.0174532925199433),#17);
            #17=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
            #6=IFCSIUNIT(*,.MASSUNIT.,.KILO.,.GRAM.);
            #7=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.DEGREE_CELSIUS.);
            #18=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
            #100=IFCDERIVEDUNIT((#101,#102),.MASSDENSITYUNIT.,$);
            #101=IFCDERIVEDUNITELEMENT(#6,1);
            #102=IFCDERIVEDUNITELEMENT(#3,-3);
            #20=IFCSLAB('slab',$,$,$,$,$,$,$,.ROOF.);
            #21=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#20),#22);
            """;

    @ParameterizedTest
    @CsvSource({
        "IFCLENGTHMEASURE(250.),0.25",
        "IFCPOSITIVELENGTHMEASURE(250.),0.25",
        "IFCAREAMEASURE(100.),9.290304",
        "IFCVOLUMEMEASURE(1000000000.),",
        "IFCPLANEANGLEMEASURE(30.),0.5235987755982988",
        "IFCMASSMEASURE(12.5),12.5",
        "IFCTHERMODYNAMICTEMPERATUREMEASURE(20.),293.15",
        "IFCMASSDENSITYMEASURE(7.85E-06),7850",
        "IFCRATIOMEASURE(0.02),0.02",
        "IFCREAL(3.),3",
        "IFCINTEGER(3),3",
        "IFCTHERMALTRANSMITTANCEMEASURE(0.3),",
        "IFCLABEL('30'),",
        "IFCBOOLEAN(.T.),"
    })
    void convertsByTheMeasure(String value, Double si) {
        PropertyValue property = single("IFCPROPERTYSINGLEVALUE('P',$," + value + ",$)");

        assertThat(property.measure()).isEqualTo(value.substring(0, value.indexOf('(')));
        if (si == null) {
            assertThat(property.number()).isEmpty();
        } else {
            assertThat(property.number().orElseThrow()).isCloseTo(si, within(1e-12 * Math.abs(si)));
        }
    }

    @Test
    void goesByAUnitOfTheValueItself() {
        assertThat(single("IFCPROPERTYSINGLEVALUE('P',$,IFCLENGTHMEASURE(2.5),#18)")
                        .number())
                .hasValue(2.5);
    }

    @ParameterizedTest
    @CsvSource({
        "IFCLABEL('steel'),steel",
        "IFCREAL(30.),30",
        "IFCREAL(0.25),0.25",
        "IFCREAL(1.E+20),1.0E20",
        "IFCINTEGER(7),7",
        "IFCBOOLEAN(.T.),TRUE",
        "IFCLOGICAL(.U.),UNKNOWN"
    })
    void givesTheValueAsText(String value, String text) {
        assertThat(single("IFCPROPERTYSINGLEVALUE('P',$," + value + ",$)").text())
                .isEqualTo(text);
    }

    @Test
    void readsEnumeratedAndListValues() {
        assertThat(single("IFCPROPERTYENUMERATEDVALUE('P',$,(IFCLABEL('NEW')),$)"))
                .isEqualTo(new PropertyValue("NEW", java.util.OptionalDouble.empty(), "IFCLABEL", false));
        PropertyValue list = single("IFCPROPERTYLISTVALUE('P',$,(IFCLENGTHMEASURE(1.),IFCLENGTHMEASURE(2.)),$)");
        assertThat(list.text()).isEqualTo("1; 2");
        assertThat(list.number()).isEmpty();
        assertThat(list.measure()).isEqualTo("IFCLENGTHMEASURE");
        assertThat(single("IFCPROPERTYLISTVALUE('P',$,(IFCLENGTHMEASURE(5.)),$)")
                        .number())
                .hasValue(0.005);
    }

    @Test
    void readsBoundedValues() {
        PropertyValue range = single("IFCPROPERTYBOUNDEDVALUE('P',$,IFCLENGTHMEASURE(9.),IFCLENGTHMEASURE(1.),$,$)");
        assertThat(range.text()).isEqualTo("1 to 9");
        assertThat(range.number()).isEmpty();

        PropertyValue set = single(
                "IFCPROPERTYBOUNDEDVALUE('P',$,IFCLENGTHMEASURE(9.),IFCLENGTHMEASURE(1.),$,IFCLENGTHMEASURE(4.))");
        assertThat(set.text()).isEqualTo("4 (1 to 9)");
        assertThat(set.number()).hasValue(0.004);
    }

    @Test
    void flattensComplexProperties() {
        Map<String, PropertyValue> properties = properties("#22=IFCPROPERTYSET('p',$,'Set',$,(#23));"
                + "#23=IFCCOMPLEXPROPERTY('Outer',$,'use',(#24));#24=IFCCOMPLEXPROPERTY('Inner',$,'use',(#25));"
                + "#25=IFCPROPERTYSINGLEVALUE('P',$,IFCREAL(1.),$);");

        assertThat(properties).containsOnlyKeys("Set.Outer.Inner.P");
    }

    @Test
    void survivesAComplexPropertyThatContainsItself() {
        assertThat(properties("#22=IFCPROPERTYSET('p',$,'Set',$,(#23));#23=IFCCOMPLEXPROPERTY('C',$,'use',(#23));"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            delimiter = '|',
            value = {
                "IFCQUANTITYLENGTH('Q',$,$,1500.,$)|IFCQUANTITYLENGTH|1.5",
                "IFCQUANTITYAREA('Q',$,$,10.,$)|IFCQUANTITYAREA|0.9290304",
                "IFCQUANTITYVOLUME('Q',$,#103,2.,$)|IFCQUANTITYVOLUME|2",
                "IFCQUANTITYWEIGHT('Q',$,$,7.,$)|IFCQUANTITYWEIGHT|7",
                "IFCQUANTITYCOUNT('Q',$,$,3.,$)|IFCQUANTITYCOUNT|3",
                "IFCQUANTITYTIME('Q',$,$,3.,$)|IFCQUANTITYTIME|"
            })
    void readsQuantities(String quantity, String measure, Double si) {
        PropertyValue value = Objects.requireNonNull(properties("#22=IFCELEMENTQUANTITY('q',$,'Qto',$,$,(#23));"
                        + "#103=IFCSIUNIT(*,.VOLUMEUNIT.,$,.CUBIC_METRE.);#23=" + quantity + ";")
                .get("Qto.Q"));

        assertThat(value.measure()).isEqualTo(measure);
        assertThat(value.number().isPresent()).isEqualTo(si != null);
        if (si != null) {
            assertThat(value.number().orElseThrow()).isCloseTo(si, within(1e-12));
        }
    }

    @Test
    void flattensComplexQuantities() {
        assertThat(properties("#22=IFCELEMENTQUANTITY('q',$,'Qto',$,$,(#23));"
                        + "#23=IFCPHYSICALCOMPLEXQUANTITY('Layer',$,(#24),'layer',$,$);"
                        + "#24=IFCQUANTITYLENGTH('Width',$,$,1.,$);"))
                .containsOnlyKeys("Qto.Layer.Width");
    }

    @Test
    void putsOwnPropertiesBeforeThoseOfTheType() {
        Map<String, PropertyValue> properties = properties("""
                #22=IFCPROPERTYSET('p',$,'Set',$,(#23));
                #23=IFCPROPERTYSINGLEVALUE('A',$,IFCLABEL('own'),$);
                #30=IFCSLABTYPE('t',$,'Type',$,$,(#31),$,$,$,.ROOF.);
                #31=IFCPROPERTYSET('p2',$,'Set',$,(#32,#33));
                #32=IFCPROPERTYSINGLEVALUE('A',$,IFCLABEL('type'),$);
                #33=IFCPROPERTYSINGLEVALUE('B',$,IFCLABEL('type'),$);
                #34=IFCRELDEFINESBYTYPE('r2',$,$,$,(#20),#30);
                """);

        assertThat(properties.get("Set.A")).extracting("text", "inherited").containsExactly("own", false);
        assertThat(properties.get("Set.B")).extracting("text", "inherited").containsExactly("type", true);
    }

    @Test
    void readsSeveralSetsAssignedAtOnce() {
        IfcModel model = ModelText.model("IFC4", """
                #20=IFCSLAB('slab',$,$,$,$,$,$,$,.ROOF.);
                #21=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#20),IFCPROPERTYSETDEFINITIONSET((#22,#24)));
                #22=IFCPROPERTYSET('p',$,'One',$,(#23));
                #23=IFCPROPERTYSINGLEVALUE('P',$,IFCLABEL('1'),$);
                #24=IFCPROPERTYSET('p',$,'Two',$,(#23));
                """);

        assertThat(model.describe(model.entity(20)).properties()).containsOnlyKeys("One.P", "Two.P");
    }

    @Test
    void leavesOutPropertiesWithoutValue() {
        assertThat(properties("#22=IFCPROPERTYSET('p',$,'Set',$,(#23));#23=IFCPROPERTYSINGLEVALUE('P',$,$,$);"))
                .isEmpty();
    }

    private static PropertyValue single(String property) {
        return Objects.requireNonNull(properties("#22=IFCPROPERTYSET('p',$,'Set',$,(#23));#23=" + property + ";")
                .get("Set.P"));
    }

    private static Map<String, PropertyValue> properties(String more) {
        IfcModel model = ModelText.model("IFC4", FILE + more);
        return model.describe(model.entity(20)).properties();
    }
}

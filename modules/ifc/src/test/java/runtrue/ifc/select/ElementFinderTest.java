package runtrue.ifc.select;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.ModelText;

class ElementFinderTest {
    /** A shape that no test looks into. */
    private static final String BODY = "#90=IFCPRODUCTDEFINITIONSHAPE($,$,());";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "IFCROOF      | 'r'          | .GABLE_ROOF. | class only",
                "IFCSLAB      | 's'          | .ROOF.       | predefined type ROOF",
                "IFCSLAB      | 'Flachdach'  | .FLOOR.      | name matches \"Flachdach\"",
                "IFCSLAB      | 's'          | .FLOOR.      |",
                "IFCSLAB      | 's'          | $            |",
                "IFCSLAB      | 'Dach'       | .ROOF.       | predefined type ROOF",
                "IFCCOVERING  | 'c'          | .ROOFING.    | predefined type ROOFING",
                "IFCCOVERING  | 'Dach'       | $            | name matches \"Dach\"",
                "IFCCOVERING  | 'Dach'       | .CEILING.    |",
                "IFCBUILDINGELEMENTPROXY | 'Toiture' | $    | name matches \"Toiture\"",
                "IFCPLATE     | 'Roof plate' | $            |"
            })
    void findsRoofsByClassTypeOrName(String keyword, String name, String type, String evidence) {
        FoundElements found = find("#1=" + keyword + "('g',$," + name + ",$,$,$,#90,$," + type + ");");

        assertThat(found.roofs())
                .extracting(FoundElement::evidence)
                .isEqualTo(evidence == null ? List.of() : List.of(evidence));
    }

    @Test
    void goesByTheTypeObjectWhereTheSlabSaysNothing() {
        FoundElements found = find("#1=IFCSLAB('g',$,'s',$,$,$,#90,$,$);"
                + "#2=IFCSLABTYPE('t',$,'T',$,$,$,$,$,$,.ROOF.);#3=IFCRELDEFINESBYTYPE('r',$,$,$,(#1),#2);");

        assertThat(found.roofs()).extracting(FoundElement::evidence).containsExactly("predefined type ROOF");
    }

    @Test
    void takesThePartsOfARoofButNotItsFramingAndGutters() {
        FoundElements found = find("""
                #1=IFCROOF('g',$,'Main',$,$,$,$,$,$);
                #2=IFCSLAB('g2',$,'Roof panel',$,$,$,#90,$,$);
                #3=IFCBEAM('g3',$,'Beam',$,$,$,#90,$,$);
                #4=IFCPIPESEGMENT('g4',$,'Rinne',$,$,$,#90,$,.GUTTER.);
                #5=IFCPLATE('g5',$,'Sheet',$,$,$,#90,$,$);
                #6=IFCRELAGGREGATES('r',$,$,$,#1,(#2,#3,#4,#5));
                """);

        assertThat(found.roofs())
                .extracting(roof -> roof.entity().id(), FoundElement::evidence)
                .containsExactly(tuple(2, "part of IfcRoof \"Main\""), tuple(5, "part of IfcRoof \"Main\""));
        assertThat(found.supports())
                .extracting(support -> support.entity().id())
                .containsExactly(3);
    }

    @Test
    void followsRoofsInsideRoofsAndSurvivesACycle() {
        FoundElements found = find("""
                #1=IFCROOF('g',$,'Outer',$,$,$,$,$,$);
                #2=IFCROOF('g2',$,'Inner',$,$,$,$,$,$);
                #3=IFCSLAB('g3',$,'x',$,$,$,#90,$,$);
                #6=IFCRELAGGREGATES('r',$,$,$,#1,(#2));
                #7=IFCRELAGGREGATES('r',$,$,$,#2,(#3,#1));
                """);

        assertThat(found.roofs()).extracting(roof -> roof.entity().id()).containsExactly(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "IFC4     | IFCELEMENTASSEMBLY('g',$,'Dach',$,$,$,$,$,$,$)          | 2 5",
                "IFC4     | IFCELEMENTASSEMBLY('g',$,'Dach',$,$,$,$,$,$,.NOTDEFINED.) | 2 5",
                "IFC4     | IFCELEMENTASSEMBLY('g',$,'Dach',$,$,$,$,$,$,.TRUSS.)    |",
                "IFC4     | IFCELEMENTASSEMBLY('g',$,'Roof truss',$,$,$,$,$,$,$)    |",
                "IFC4     | IFCELEMENTASSEMBLY('g',$,'A 12',$,$,$,$,$,$,$)          |",
                "IFC4X3   | IFCBUILTELEMENT('g',$,'Dach',$,$,$,$,$)                 | 2 5",
                "IFC4X3   | IFCCOURSE('g',$,'Dach',$,$,$,$,$,$)                     | 2 5"
            })
    void takesThePartsOfWhatIsNamedAsRoof(String schema, String whole, String expected) {
        FoundElements found = find(
                schema,
                "#1=" + whole + ";#2=IFCBUILDINGELEMENTPART('g2',$,'x',$,$,$,#90,$,$);"
                        + "#5=IFCPLATE('g5',$,'x',$,$,$,#90,$,$);#6=IFCRELAGGREGATES('r',$,$,$,#1,(#2,#5));");

        List<Integer> ids =
                found.roofs().stream().map(roof -> roof.entity().id()).toList();
        assertThat(ids).isEqualTo(numbers(expected));
    }

    private static List<Integer> numbers(@Nullable String list) {
        return list == null
                ? List.of()
                : Arrays.stream(list.split(" ")).map(Integer::valueOf).toList();
    }

    @Test
    void anAssemblyOfFramingIsNoRoofAndItsPlatesConnectIt() {
        FoundElements found = find("#1=IFCELEMENTASSEMBLY('g',$,'Roof',$,$,$,$,$,$,$);"
                + "#2=IFCBEAM('g2',$,'x',$,$,$,#90,$,$);#5=IFCPLATE('g5',$,'x',$,$,$,#90,$,$);"
                + "#6=IFCRELAGGREGATES('r',$,$,$,#1,(#2,#5));");

        assertThat(found.roofs()).isEmpty();
        assertThat(found.supports()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "IFCBUILTELEMENT('g',$,'Roof shell',$,$,$,#90,$)     | true",
                "IFCBUILTELEMENT('g',$,'Facade',$,$,$,#90,$)         | false",
                "IFCWALL('g',$,'Roof parapet',$,$,$,#90,$,$)         | false",
                "IFCCOURSE('g',$,'Roof insulation',$,$,$,#90,$,$)    | true",
                "IFCCOURSE('g',$,'Roof',$,$,$,#90,$,.BALLASTBED.)    | false",
                "IFCROOF('g',$,'x',$,$,$,#90,$,.FREEFORM.)           | true"
            })
    void findsRoofsAmongTheClassesOfIfc4x3(String element, boolean expected) {
        assertThat(find("IFC4X3", "#1=" + element + ";").roofs()).hasSize(expected ? 1 : 0);
    }

    @Test
    void keepsARoofWithABodyBesideItsParts() {
        FoundElements found = find("#1=IFCROOF('g',$,'Main',$,$,$,#90,$,$);#2=IFCSLAB('g2',$,'x',$,$,$,#90,$,$);"
                + "#6=IFCRELAGGREGATES('r',$,$,$,#1,(#2));");

        assertThat(found.roofs()).extracting(roof -> roof.entity().id()).containsExactly(1, 2);
    }

    @Test
    void keepsARoofWithoutShapeAndPartsSoThatSomebodyHearsOfIt() {
        assertThat(find("#1=IFCROOF('g',$,'Lost',$,$,$,$,$,$);").roofs()).hasSize(1);
    }

    @Test
    void keepsARoofWhosePartsAreOnlyFraming() {
        FoundElements found = find("#1=IFCROOF('g',$,'Frame',$,$,$,$,$,$);#2=IFCBEAM('g2',$,'x',$,$,$,#90,$,$);"
                + "#6=IFCRELAGGREGATES('r',$,$,$,#1,(#2));");

        assertThat(found.roofs()).extracting(roof -> roof.entity().id()).containsExactly(1);
    }

    @Test
    void takesARoofThatHasOnlyAFootprintForAContainer() {
        FoundElements found = find("#1=IFCROOF('g',$,'Main',$,$,$,#91,$,$);#2=IFCSLAB('g2',$,'x',$,$,$,#90,$,$);"
                + "#91=IFCPRODUCTDEFINITIONSHAPE($,$,(#92));#92=IFCSHAPEREPRESENTATION($,'FootPrint','Curve2D',());"
                + "#6=IFCRELAGGREGATES('r',$,$,$,#1,(#2));");

        assertThat(found.roofs()).extracting(roof -> roof.entity().id()).containsExactly(2);
    }

    @Test
    void takesARoofForAContainerWhenAPartHasAMaterialUsageInPlaceOfABody() {
        FoundElements found = find("#1=IFCROOF('g',$,'Main',$,$,$,$,$,$);#2=IFCSLAB('g2',$,'x',$,$,$,#91,$,$);"
                + "#91=IFCPRODUCTDEFINITIONSHAPE($,$,(#92));#92=IFCSHAPEREPRESENTATION($,'FootPrint','Curve2D',());"
                + "#5=IFCRELASSOCIATESMATERIAL('m',$,$,$,(#2),#93);"
                + "#93=IFCMATERIALLAYERSETUSAGE($,.AXIS3.,.POSITIVE.,0.,$);#6=IFCRELAGGREGATES('r',$,$,$,#1,(#2));");

        assertThat(found.roofs()).extracting(roof -> roof.entity().id()).containsExactly(2);
    }

    @Test
    void notesAnElementThatCannotBeReadAndGoesOn() {
        FoundElements found =
                find("#1=IFCSLAB('g',$,'x',$,$,$,#90,$,?ROOF);#2=IFCSLAB('g2',$,'x',$,$,$,#90,$,.ROOF.);");

        assertThat(found.roofs()).extracting(roof -> roof.entity().id()).containsExactly(2);
        assertThat(found.notes())
                .singleElement()
                .satisfies(note -> assertThat(note).contains("#1 (IfcSlab)", "left out"));
        assertThat(found.broken()).singleElement().satisfies(broken -> {
            assertThat(broken.entity().id()).isEqualTo(1);
            assertThat(broken.roof()).isTrue();
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "IFCMEMBER | 'm'            | .PURLIN.  | predefined type PURLIN",
                "IFCMEMBER | 'm'            | .RAFTER.  | predefined type RAFTER",
                "IFCBEAM   | 'b'            | .JOIST.   | predefined type JOIST",
                "IFCBEAM   | 'Pfette U160'  | .BEAM.    | name matches \"Pfette\"",
                "IFCMEMBER | 'm'            | $         | class only",
                "IFCBEAMSTANDARDCASE | 'b'  | .BEAM.    | class only",
                "IFCMEMBER | 'Purlin brace' | .BRACE.   |",
                "IFCMEMBER | 'm'            | .MULLION. |",
                "IFCMEMBER | 'm'            | .STUD.    |",
                "IFCBEAM   | 'b'            | .LINTEL.  |",
                "IFCCOLUMN | 'Purlin'       | $         |"
            })
    void findsSupportsByTypeNameOrClass(String keyword, String name, String type, String evidence) {
        FoundElements found = find("#1=" + keyword + "('g',$," + name + ",$,$,$,#90,$," + type + ");");

        assertThat(found.supports())
                .extracting(FoundElement::evidence)
                .isEqualTo(evidence == null ? List.of() : List.of(evidence));
    }

    @Test
    void looksForNamesInObjectTypeTypeNameAndTag() {
        FoundElements found = find("""
                #1=IFCMEMBER('a',$,'x',$,'Purlin',$,#90,$,$);
                #2=IFCMEMBER('b',$,'x',$,$,$,#90,'PURLIN-7',$);
                #3=IFCMEMBER('c',$,'x',$,$,$,#90,$,$);
                #4=IFCMEMBERTYPE('t',$,'Pfette',$,$,$,$,$,$,.NOTDEFINED.);
                #5=IFCRELDEFINESBYTYPE('r',$,$,$,(#3),#4);
                """);

        assertThat(found.supports())
                .extracting(FoundElement::evidence)
                .containsExactly("name matches \"Purlin\"", "name matches \"PURLIN\"", "name matches \"Pfette\"");
    }

    @Test
    void selectsByPropertyAndClassification() {
        Selector byProperty = Selector.ofClass("IfcWall").withProperty("Set.Use", Pattern.compile("^roof$"));
        Selector byCode = Selector.ofClass("IfcWall").withClassification(Pattern.compile("^27\\."));
        Selection selection = new Selection(List.of(byProperty, byCode), Set.of(), List.of(), List.of());
        String data = """
                #1=IFCWALL('a',$,'x',$,$,$,#90,$,$);
                #2=IFCWALL('b',$,'x',$,$,$,#90,$,$);
                #3=IFCWALL('c',$,'x',$,$,$,#90,$,$);
                #4=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#5);
                #5=IFCPROPERTYSET('p',$,'Set',$,(#6));
                #6=IFCPROPERTYSINGLEVALUE('Use',$,IFCLABEL('roof'),$);
                #7=IFCRELASSOCIATESCLASSIFICATION('r',$,$,$,(#2),#8);
                #8=IFCCLASSIFICATIONREFERENCE($,'27.12','Pitched roofs',$,$,$);
                """;

        FoundElements found = ElementFinder.find(ModelText.model("IFC4", BODY + data), selection);

        assertThat(found.roofs())
                .extracting(FoundElement::evidence)
                .containsExactly("property Set.Use is \"roof\"", "classification \"27.12\"");
    }

    @Test
    void asksThatAllConditionsOfASelectorHold() {
        Selector both = Selector.ofClass("IfcWall").withTypes("SOLIDWALL").withName(Pattern.compile("roof"));
        Selection selection = new Selection(List.of(both), Set.of(), List.of(), List.of());
        String data = "#1=IFCWALL('a',$,'roof',$,$,$,#90,$,.SOLIDWALL.);#2=IFCWALL('b',$,'roof',$,$,$,#90,$,.MOVABLE.);"
                + "#3=IFCWALL('c',$,'x',$,$,$,#90,$,.SOLIDWALL.);";

        FoundElements found = ElementFinder.find(ModelText.model("IFC4", BODY + data), selection);

        assertThat(found.roofs())
                .extracting(roof -> roof.entity().id(), FoundElement::evidence)
                .containsExactly(tuple(1, "predefined type SOLIDWALL, name matches \"roof\""));
    }

    @Test
    void leavesOutWhatIsExcludedWhateverElseHolds() {
        Selection standard = Selection.standard();
        Selector temporary = new Selector(
                Set.of(), Set.of(), Optional.of(Pattern.compile("(?i)temporary")), Optional.empty(), Optional.empty());
        Selection selection =
                new Selection(standard.roofs(), standard.roofParts(), standard.supports(), List.of(temporary));
        String data =
                "#1=IFCSLAB('a',$,'Temporary roof',$,$,$,#90,$,.ROOF.);#2=IFCBEAM('b',$,'temporary',$,$,$,#90,$,$);";

        FoundElements found = ElementFinder.find(ModelText.model("IFC4", BODY + data), selection);

        assertThat(found.roofs()).isEmpty();
        assertThat(found.supports()).isEmpty();
    }

    private static FoundElements find(String data) {
        return find("IFC4", data);
    }

    private static FoundElements find(String schema, String data) {
        return ElementFinder.find(ModelText.model(schema, BODY + data), Selection.standard());
    }
}

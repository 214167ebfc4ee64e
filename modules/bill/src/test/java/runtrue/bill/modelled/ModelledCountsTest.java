package runtrue.bill.modelled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runtrue.bill.Bill;
import runtrue.bill.TwoPlanes;
import runtrue.ifc.IfcModel;
import runtrue.roof.Roof;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUps;
import runtrue.step.StepFile;

/** A plane of 10 x 6 m at level 0, with what a small invented file models on it. */
class ModelledCountsTest {
    private static final BuildUp BUILD_UP = BuildUps.bundled("single-skin");

    private static final String COMMON = """
            #1=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
            #2=IFCUNITASSIGNMENT((#1));
            #3=IFCCARTESIANPOINT((0.,0.,0.));
            #4=IFCAXIS2PLACEMENT3D(#3,$,$);
            #5=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#4,$);
            #6=IFCPROJECT('0Project00000000000000',$,'P',$,$,$,$,(#5),#2);
            #7=IFCLOCALPLACEMENT($,#4);
            #8=IFCDIRECTION((0.,0.,1.));
            #20=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,0.02,0.02);
            #22=IFCEXTRUDEDAREASOLID(#20,#4,#8,0.05);
            #23=IFCSHAPEREPRESENTATION(#5,'Body','SweptSolid',(#22));
            #24=IFCREPRESENTATIONMAP(#4,#23);
            #25=IFCPRODUCTDEFINITIONSHAPE($,$,(#23));
            """;

    private static List<ModelledCount> counts(String... data) {
        Roof roof = TwoPlanes.roof(TwoPlanes.plane("A", 10, 6, 5));
        Bill bill = TwoPlanes.bill(roof);
        List<IfcModel> models =
                Arrays.stream(data).map(ModelledCountsTest::model).toList();
        return ModelledCounts.of(models, roof, bill, BUILD_UP);
    }

    private static IfcModel model(String data) {
        String text = "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
                + "FILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n" + COMMON + data + "\nENDSEC;\nEND-ISO-10303-21;\n";
        return IfcModel.of(StepFile.of("test.ifc", text.getBytes(StandardCharsets.ISO_8859_1)));
    }

    /** A thing of the common shape at a place. */
    private static String at(int id, String place, String thing) {
        return "#%d=IFCCARTESIANPOINT((%s));#%d=IFCAXIS2PLACEMENT3D(#%d,$,$);#%d=IFCLOCALPLACEMENT($,#%d);#%d=%s;\n"
                .formatted(id, place, id + 1, id, id + 2, id + 1, id + 3, thing.formatted(id + 2));
    }

    private static final String CLIPS = """
            #31=IFCCARTESIANPOINT((1.,1.,-0.1));
            #32=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#31,$,$);
            #33=IFCMAPPEDITEM(#24,#32);
            #34=IFCCARTESIANPOINT((2.,1.,-0.1));
            #35=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#34,$,$);
            #36=IFCMAPPEDITEM(#24,#35);
            #37=IFCCARTESIANPOINT((20.,1.,-0.1));
            #38=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#37,$,$);
            #39=IFCMAPPEDITEM(#24,#38);
            #40=IFCSHAPEREPRESENTATION(#5,'Body','MappedRepresentation',(#33,#36,#39));
            #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#40));
            #42=IFCDISCRETEACCESSORY('0Clips000000000000000A',$,'Clip 12',$,$,#7,#41,$,$);
            """;

    /** Ribs at 0, 0.5 ... 10 on five lines: 21 x 5 = 105 clips are derived; screws of clips are none. */
    @Test
    void one_accessory_of_three_mapped_items_is_three_each_where_it_stands() {
        assertThat(counts(CLIPS))
                .extracting(ModelledCount::plane, ModelledCount::count, ModelledCount::items, ModelledCount::derived)
                .containsExactly(
                        tuple("A", 2L, List.of("clip"), OptionalDouble.of(105)),
                        tuple("", 1L, List.of(), OptionalDouble.empty()));
        assertThat(counts(CLIPS)).allMatch(c -> c.how().equals("by its mapped items") && c.occurrences() == 1);
    }

    @Test
    void a_count_that_is_stated_goes_before_what_is_drawn() {
        String screws =
                at(50, "3.,3.,-0.1", "IFCMECHANICALFASTENER('0Screws00000000000000A',$,'S',$,$,#%d,#25,$,$,$,.SCREW.)")
                        + """
                #60=IFCQUANTITYCOUNT('Count',$,$,40.,$);
                #61=IFCELEMENTQUANTITY('0Quantity000000000000A',$,'BaseQuantities',$,$,(#60));
                #62=IFCRELDEFINESBYPROPERTIES('0Relation000000000000A',$,$,$,(#53),#61);
                """;
        assertThat(counts(screws)).singleElement().satisfies(c -> {
            assertThat(c.count()).isEqualTo(40);
            assertThat(c.how()).isEqualTo("by the count that it states");
            assertThat(c.items()).containsExactly("mesh-screw", "clip-screw", "flashing-screw");
        });
    }

    @Test
    void what_the_bill_does_not_name_is_compared_with_nothing() {
        String rivet = at(50, "3.,3.,-0.1", "IFCFASTENER('0Rivet000000000000000A',$,'Rivet',$,$,#%d,#25,$,$)");
        assertThat(counts(rivet)).singleElement().satisfies(c -> {
            assertThat(c.derived()).isEmpty();
            assertThat(c.remark()).isEqualTo("the bill counts nothing of this name");
        });
    }

    @Test
    void what_is_issued_in_two_files_is_one_thing() {
        assertThat(counts(CLIPS, CLIPS)).extracting(ModelledCount::count).containsExactly(2L, 1L);
    }

    /** Of 0.5 x 6 m, of 3 x 6 m, which is more than one sheet, and a splice plate of 20 x 20 mm. */
    @Test
    void narrow_plates_on_a_plane_are_single_sheets() {
        String shapes = """
                #70=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,0.5,6.);
                #71=IFCEXTRUDEDAREASOLID(#70,#4,#8,0.01);
                #72=IFCSHAPEREPRESENTATION(#5,'Body','SweptSolid',(#71));
                #73=IFCPRODUCTDEFINITIONSHAPE($,$,(#72));
                #74=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,3.,6.);
                #75=IFCEXTRUDEDAREASOLID(#74,#4,#8,0.01);
                #76=IFCSHAPEREPRESENTATION(#5,'Body','SweptSolid',(#75));
                #77=IFCPRODUCTDEFINITIONSHAPE($,$,(#76));
                """;
        String plates = at(80, "1.25,3.,0.", "IFCPLATE('0Plate000000000000000A',$,'a',$,$,#%d,#73,$,$)")
                + at(90, "5.,3.,0.", "IFCPLATE('0Plate000000000000000B',$,'b',$,$,#%d,#77,$,$)")
                + at(100, "7.,3.,0.", "IFCPLATE('0Plate000000000000000C',$,'c',$,$,#%d,#25,$,$)");
        assertThat(counts(shapes + plates))
                .extracting(ModelledCount::kind, ModelledCount::count, ModelledCount::derived)
                .containsExactly(tuple("sheet", 1L, OptionalDouble.of(20)));
    }
}

package runtrue.roof.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.roof.Surround.Box;
import runtrue.roof.halls.SharedFiles;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/** Boxes around bodies that were not made: never too small, and no larger than they need to be where that is easy. */
class ExtentsTest {
    /** Around a pipe placed at (10, 20, 30) whose shape is given. */
    private static Optional<Box> box(String representations) {
        String text = """
                ISO-10303-21;
                HEADER;
                FILE_DESCRIPTION((''),'2;1');
                FILE_NAME('','',(''),(''),'','','');
                FILE_SCHEMA(('IFC4'));
                ENDSEC;
                DATA;
                #1=IFCPROJECT('0000000000000000000001',$,'P',$,$,$,$,(#2),#3);
                #2=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#5,$);
                #3=IFCUNITASSIGNMENT((#4));
                #4=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                #5=IFCAXIS2PLACEMENT3D(#6,$,$);
                #6=IFCCARTESIANPOINT((0.,0.,0.));
                #7=IFCLOCALPLACEMENT($,#8);
                #8=IFCAXIS2PLACEMENT3D(#9,$,$);
                #9=IFCCARTESIANPOINT((10.,20.,30.));
                #20=IFCPIPESEGMENT('0000000000000000000020',$,'Pipe',$,$,#7,#21,$,$);
                """ + representations + """

                ENDSEC;
                END-ISO-10303-21;
                """;
        IfcModel model = IfcModel.of(StepFile.of("test.ifc", text.getBytes(StandardCharsets.UTF_8)));
        return new Extents(model, Vector3D.ZERO).of(model.entity(20));
    }

    private static final String BODY = """
            #21=IFCPRODUCTDEFINITIONSHAPE($,$,(#22));
            #22=IFCSHAPEREPRESENTATION(#2,'Body','AdvancedSweptSolid',(#23));
            """;

    @Test
    void a_straight_pipe_extends_by_its_radius_around_its_line() {
        Box box = box(BODY + """
                        #23=IFCSWEPTDISKSOLID(#24,0.1,$,$,$);
                        #24=IFCPOLYLINE((#25,#26));
                        #25=IFCCARTESIANPOINT((1.,0.,0.));
                        #26=IFCCARTESIANPOINT((1.,0.,2.));
                        """).orElseThrow();

        assertThat(box.low().distance(Vector3D.of(10.9, 19.9, 29.9))).isLessThan(1e-9);
        assertThat(box.high().distance(Vector3D.of(11.1, 20.1, 32.1))).isLessThan(1e-9);
    }

    /** A ball of 0.5 m at 2 m: its farthest point is 2.5 m from the element's origin. */
    @Test
    void a_body_of_any_kind_lies_within_what_its_points_and_lengths_reach() {
        Box box = box(BODY + """
                        #23=IFCSPHERE(#24,0.5);
                        #24=IFCAXIS2PLACEMENT3D(#25,$,$);
                        #25=IFCCARTESIANPOINT((2.,0.,0.));
                        """).orElseThrow();

        assertThat(box.low().getX()).isLessThanOrEqualTo(11.5);
        assertThat(box.high().getX()).isGreaterThanOrEqualTo(12.5);
        assertThat(box.high().getX()).isLessThan(10 + 6 * 2 + 0.5 + 1e-9);
    }

    @Test
    void where_the_body_is_broken_the_stated_bounding_box_counts() {
        assertThat(box("""
                        #21=IFCPRODUCTDEFINITIONSHAPE($,$,(#22,#23));
                        #22=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#99));
                        #23=IFCSHAPEREPRESENTATION(#2,'Box','BoundingBox',(#24));
                        #24=IFCBOUNDINGBOX(#6,1.,2.,3.);
                        """)).hasValueSatisfying(box -> {
            assertThat(box.low()).isEqualTo(Vector3D.of(10, 20, 30));
            assertThat(box.high()).isEqualTo(Vector3D.of(11, 22, 33));
        });
    }

    private static final String BROKEN_PART = """
            #21=IFCPRODUCTDEFINITIONSHAPE($,$,(#22));
            #22=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#99));
            #30=IFCELEMENTASSEMBLY('0000000000000000000030',$,'Rack',$,$,#35,#31,$,$,$);
            #35=IFCLOCALPLACEMENT($,#5);
            #36=IFCRELAGGREGATES('0000000000000000000036',$,$,$,#30,(#20));
            #32=IFCSHAPEREPRESENTATION(#2,'Box','BoundingBox',(#34));
            #34=IFCBOUNDINGBOX(#9,4.,5.,6.);
            """;

    @Test
    void a_broken_part_lies_within_the_box_that_its_assembly_states() {
        assertThat(box(BROKEN_PART + "#31=IFCPRODUCTDEFINITIONSHAPE($,$,(#32));"))
                .hasValueSatisfying(box -> {
                    assertThat(box.low()).isEqualTo(Vector3D.of(10, 20, 30));
                    assertThat(box.high()).isEqualTo(Vector3D.of(14, 25, 36));
                });
    }

    @Test
    void an_assembly_with_a_body_of_its_own_may_have_its_box_around_that_alone() {
        assertThat(box(BROKEN_PART + """
                        #31=IFCPRODUCTDEFINITIONSHAPE($,$,(#32,#33));
                        #33=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#98));
                        """)).isEmpty();
    }

    @Test
    void nothing_is_known_of_what_is_broken_and_states_no_box() {
        String broken = """
                #21=IFCPRODUCTDEFINITIONSHAPE($,$,(#22));
                #22=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#99));
                """;

        assertThat(box(broken)).isEmpty();
        assertThat(box(BODY + "#23=IFCSPHERE(#99,0.5);")).isEmpty();
    }

    /** The bodies are made by the shape reader, on a way of its own. */
    @ParameterizedTest
    @CsvSource({"models", "halls"})
    void every_body_of_the_real_models_lies_within_its_box(String folder) throws IOException {
        try (Stream<Path> files = Files.walk(SharedFiles.folder(folder))) {
            for (Path path :
                    files.filter(f -> f.toString().endsWith(".ifc")).sorted().toList()) {
                assertBodiesWithin(path);
            }
        }
    }

    private static void assertBodiesWithin(Path path) {
        try (StepFile file = StepFile.open(path)) {
            IfcModel model = IfcModel.of(file);
            Extents extents = new Extents(model, Vector3D.ZERO);
            ShapeReader shapes = ShapeReader.of(Tolerances.standard(), Vector3D.ZERO);
            List<IfcEntity> products = model.all("IfcElement");
            // Enough of each file to meet every kind of body in it.
            for (int i = 0; i < products.size(); i += 1 + products.size() / 300) {
                IfcEntity product = products.get(i);
                if (shapes.read(product) instanceof Shape.Body body) {
                    assertThat(extents.of(product))
                            .as(path + " " + product.label())
                            .hasValueSatisfying(box -> {
                                for (Face face : body.faces()) {
                                    face.outline().forEach(p -> assertWithin(p, box, path + " " + product.label()));
                                }
                            });
                }
            }
        }
    }

    private static void assertWithin(Vector3D p, Box box, String where) {
        double margin = 1e-3;
        assertThat(p.getX() >= box.low().getX() - margin
                        && p.getX() <= box.high().getX() + margin
                        && p.getY() >= box.low().getY() - margin
                        && p.getY() <= box.high().getY() + margin
                        && p.getZ() >= box.low().getZ() - margin
                        && p.getZ() <= box.high().getZ() + margin)
                .as(where)
                .isTrue();
    }
}

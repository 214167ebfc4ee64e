package runtrue.geometryserver;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.shape.ElementShapes;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/** Small IFC2X3 models in millimetres and degrees. */
final class ModelText {
    private static final String FRAME = """
            #1=IFCPROJECT('0000000000000000000001',#30,'Caf\\X2\\00E9\\X0\\ ''d'' \\\\',$,$,$,$,(#2),#3);
            #2=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#11,$);
            #3=IFCUNITASSIGNMENT((#4,#5));
            #4=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
            #5=IFCCONVERSIONBASEDUNIT(#6,.PLANEANGLEUNIT.,'DEGREE',#7);
            #6=IFCDIMENSIONALEXPONENTS(0,0,0,0,0,0,0);
            #7=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.0174532925199433),#8);
            #8=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
            #10=IFCCARTESIANPOINT((0.,0.,0.));
            #11=IFCAXIS2PLACEMENT3D(#10,$,$);
            #12=IFCDIRECTION((0.,0.,1.));
            #13=IFCCARTESIANPOINT((0.,0.));
            #14=IFCAXIS2PLACEMENT2D(#13,$);
            #15=IFCLOCALPLACEMENT($,#11);
            #30=IFCOWNERHISTORY(#31,#34,$,.NOCHANGE.,$,$,$,0);
            #31=IFCPERSONANDORGANIZATION(#32,#33,$);
            #32=IFCPERSON($,'n',$,$,$,$,$,$);
            #33=IFCORGANIZATION($,'o',$,$,$);
            #34=IFCAPPLICATION(#33,'1','a','a');
            """;

    /** Item 200: a rectangle of 400 by 200 mm turned by 90 degrees about an axis 1 m beside its centre. */
    static final String REVOLVED = """
            #200=IFCREVOLVEDAREASOLID(#201,#11,#203,90.);
            #201=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,400.,200.);
            #203=IFCAXIS1PLACEMENT(#204,#205);
            #204=IFCCARTESIANPOINT((1000.,0.,0.));
            #205=IFCDIRECTION((0.,1.,0.));
            """;

    /** Item 200: an extrusion of 4 by 3 by 0.2 m. */
    static final String BLOCK = """
            #200=IFCEXTRUDEDAREASOLID(#201,#11,#12,200.);
            #201=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,4000.,3000.);
            """;

    private ModelText() {}

    /** Line of a slab with the given number (100 to 199, and the two after it are its own too) whose body is item #200. */
    static String slab(int id, String globalId, String placement) {
        return """
                #%1$d=IFCSLAB('%2$s',#30,'Slab',$,$,%3$s,#%4$d,$,.ROOF.);
                #%4$d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%5$d));
                #%5$d=IFCSHAPEREPRESENTATION(#2,'Body','Any',(#200));
                """.formatted(id, globalId, placement, id + 1, id + 2);
    }

    static StepFile file(String data) {
        return file("IFC2X3", data);
    }

    static StepFile file(String schema, String data) {
        return StepFile.of(
                "test.ifc",
                ("ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
                                + "FILE_SCHEMA(('" + schema + "'));\nENDSEC;\nDATA;\n" + FRAME + data
                                + "\nENDSEC;\nEND-ISO-10303-21;\n")
                        .getBytes(StandardCharsets.ISO_8859_1));
    }

    /** A first engine that reads nothing at all. */
    static ElementShapes readsNothing() {
        return (elements, tolerances, origin) -> new ElementShapes.Reading(
                elements.stream()
                        .map(e -> (Shape) new Shape.Unread("Not read, for the sake of this test.", "Body/Any"))
                        .toList(),
                List.of());
    }

    /** All slabs of a model, read. */
    static ElementShapes.Reading slabs(StepFile file, ElementShapes engine) {
        List<IfcEntity> slabs = IfcModel.of(file).all("IfcSlab");
        return engine.read(slabs, Tolerances.standard(), Vector3D.ZERO);
    }
}

package runtrue.shape;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcModel;
import runtrue.step.StepFile;

/** Small IFC4 models in millimetres and degrees with one slab, #100, whose body is item #200. */
final class ModelText {
    private static final String FRAME = """
            #1=IFCPROJECT('0000000000000000000001',$,'p',$,$,$,$,(#2),#3);
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
            #100=IFCSLAB('0000000000000000000100',$,'Slab',$,$,#15,#101,$,.ROOF.);
            #101=IFCPRODUCTDEFINITIONSHAPE($,$,(#102));
            #102=IFCSHAPEREPRESENTATION(#2,'Body','Any',(#200));
            """;

    /** A slab of 4 by 3 by 0.2 m about the origin, from z = 0 up; to be clipped or mapped. */
    static final String BLOCK = """
            #210=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);
            #211=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#14,4000.,3000.);
            """;

    private ModelText() {}

    /** The shape of the slab; lines given may refer to those above. */
    static Shape read(String data) {
        return read(data, Vector3D.ZERO);
    }

    static Shape read(String data, Vector3D origin) {
        return readText(FRAME + data, origin);
    }

    /** As {@link #read}, with lines of the frame replaced. */
    static Shape readWith(String line, String replacement, String data) {
        return readText(FRAME.replace(line, replacement) + data, Vector3D.ZERO);
    }

    /** As {@link #readWith}, by a schema, with pairs of a line of the frame and what stands in its place. */
    static Shape readIn(String schema, String data, List<String> pairs) {
        String frame = FRAME;
        for (int i = 0; i < pairs.size(); i += 2) {
            if (!frame.contains(pairs.get(i))) {
                throw new IllegalArgumentException("not in the frame: " + pairs.get(i));
            }
            frame = frame.replace(pairs.get(i), pairs.get(i + 1));
        }
        return readText(frame + data, Vector3D.ZERO, schema);
    }

    /** As {@link #read}, by another schema than IFC4. */
    static Shape readIn(String schema, String data) {
        return readText(FRAME + data, Vector3D.ZERO, schema);
    }

    /** A model in metres and radians whose slab stands in a placement. */
    static Shape readInMetres(String placement, String data) {
        String frame = FRAME.replace(".MILLI.", "$")
                .replace("(#4,#5)", "(#4,#8)")
                .replace("#15=IFCLOCALPLACEMENT($,#11);", placement);
        return readText(frame + data, Vector3D.ZERO);
    }

    private static Shape readText(String data, Vector3D origin) {
        return readText(data, origin, "IFC4");
    }

    /** The whole text of a model whose slab has these lines for its body. */
    static String text(String schema, String data) {
        return wrapped(schema, FRAME + data);
    }

    private static String wrapped(String schema, String data) {
        return "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
                + "FILE_SCHEMA(('" + schema + "'));\nENDSEC;\nDATA;\n" + data + "\nENDSEC;\nEND-ISO-10303-21;\n";
    }

    private static Shape readText(String data, Vector3D origin, String schema) {
        String text = wrapped(schema, data);
        try (StepFile file = StepFile.of("test.ifc", text.getBytes(StandardCharsets.ISO_8859_1))) {
            return ShapeReader.of(Tolerances.standard(), origin)
                    .read(IfcModel.of(file).entity(100));
        }
    }

    static Shape.Body body(String data) {
        Shape shape = read(data);
        if (shape instanceof Shape.Body body) {
            return body;
        }
        throw new AssertionError("unread: " + shape);
    }

    static String reason(String data) {
        return ((Shape.Unread) read(data)).reason();
    }
}

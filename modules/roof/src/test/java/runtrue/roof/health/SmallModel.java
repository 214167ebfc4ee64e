package runtrue.roof.health;

import java.util.Locale;
import runtrue.roof.stated.OpenModel;

/** A model of a few slabs and bars, written as STEP. Metres; whole unless something is left out on purpose. */
final class SmallModel {
    private final StringBuilder data = new StringBuilder();
    private final StringBuilder slabs = new StringBuilder();
    private final StringBuilder all = new StringBuilder();
    private String trueNorth = "#9";
    private boolean contained = true;
    private boolean layered = true;
    private int next = 100;

    SmallModel withoutTrueNorth() {
        trueNorth = "$";
        return this;
    }

    SmallModel withoutStorey() {
        contained = false;
        return this;
    }

    SmallModel withoutMaterial() {
        layered = false;
        return this;
    }

    /** A level slab with one corner at x, y, z. */
    SmallModel slab(String globalId, double x, double y, double z, double along, double across, double thick) {
        return slab(globalId, x, y, z, prism(along, across, thick));
    }

    /** A slab as a shell of given faces, each a list of the box's corners 0 to 7 (0 to 3 below). */
    SmallModel shell(String globalId, boolean solid, double along, double across, double thick, String... faces) {
        int first = next;
        double[][] plan = {{0, 0}, {along, 0}, {along, across}, {0, across}};
        for (int i = 0; i < 8; i++) {
            add("IFCCARTESIANPOINT((%f,%f,%f))", plan[i % 4][0], plan[i % 4][1], i < 4 ? 0.0 : thick);
        }
        StringBuilder made = new StringBuilder();
        for (String face : faces) {
            StringBuilder corners = new StringBuilder();
            for (int i = 0; i < face.length(); i++) {
                corners.append(corners.isEmpty() ? "#" : ",#").append(first + (face.charAt(i) - '0'));
            }
            int bound = add("IFCFACEOUTERBOUND(#%d,.T.)", add("IFCPOLYLOOP((" + corners + "))"));
            made.append(made.isEmpty() ? "#" : ",#").append(add("IFCFACE((#" + bound + "))"));
        }
        int item = solid
                ? add("IFCFACETEDBREP(#%d)", add("IFCCLOSEDSHELL((" + made + "))"))
                : add("IFCSHELLBASEDSURFACEMODEL((#%d))", add("IFCOPENSHELL((" + made + "))"));
        return slab(globalId, 0, 0, 3, item);
    }

    private SmallModel slab(String globalId, double x, double y, double z, int item) {
        int slab = product("IFCSLAB", globalId, x, y, z, item, ".ROOF.");
        slabs.append(slabs.isEmpty() ? "#" : ",#").append(slab);
        return this;
    }

    /** A level bar along x. */
    SmallModel bar(String globalId, double x, double y, double z, double length, double size) {
        product("IFCMEMBER", globalId, x, y, z, prism(length, size, size), ".PURLIN.");
        return this;
    }

    private int product(String ifcClass, String globalId, double x, double y, double z, int item, String type) {
        int axes = add("IFCAXIS2PLACEMENT3D(#%d,$,$)", add("IFCCARTESIANPOINT((%f,%f,%f))", x, y, z));
        int placement = add("IFCLOCALPLACEMENT($,#%d)", axes);
        int shape =
                add("IFCPRODUCTDEFINITIONSHAPE($,$,(#%d))", add("IFCSHAPEREPRESENTATION(#8,'Body','',(#%d))", item));
        int product = add(
                ifcClass + "('" + globalId + "',$,'Part " + globalId + "',$,$,#%d,#%d,$,%s)", placement, shape, type);
        all.append(all.isEmpty() ? "#" : ",#").append(product);
        return product;
    }

    private int prism(double along, double across, double height) {
        int middle = add("IFCAXIS2PLACEMENT2D(#%d,$)", add("IFCCARTESIANPOINT((%f,%f))", along / 2, across / 2));
        int profile = add("IFCRECTANGLEPROFILEDEF(.AREA.,$,#%d,%f,%f)", middle, along, across);
        return add("IFCEXTRUDEDAREASOLID(#%d,$,#10,%f)", profile, height);
    }

    private int add(String entity, Object... arguments) {
        int id = next++;
        String text = arguments.length == 0 ? entity : String.format(Locale.ROOT, entity, arguments);
        data.append('#').append(id).append('=').append(text).append(";\n");
        return id;
    }

    OpenModel open() {
        String head = """
                #1=IFCPROJECT('0',$,'P',$,$,$,$,(#8),#2);
                #2=IFCUNITASSIGNMENT((#3,#4));
                #3=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                #4=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
                #5=IFCBUILDINGSTOREY('s',$,'Roof',$,$,$,$,$,.ELEMENT.,3.);
                #6=IFCAXIS2PLACEMENT3D(#7,$,$);
                #7=IFCCARTESIANPOINT((0.,0.,0.));
                #9=IFCDIRECTION((0.,1.));
                #10=IFCDIRECTION((0.,0.,1.));
                #11=IFCMATERIAL('wool',$,$);
                #12=IFCMATERIALLAYER(#11,0.2,$,$,$,$,$);
                #13=IFCMATERIALLAYERSET((#12),$,$);
                """ + "#8=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#6," + trueNorth + ");\n";
        if (contained) {
            add("IFCRELCONTAINEDINSPATIALSTRUCTURE('c',$,$,$,(" + all + "),#5)");
        }
        if (layered) {
            add("IFCRELASSOCIATESMATERIAL('m',$,$,$,(" + all + "),#13)");
        }
        return OpenModel.of("IFC4", head + data);
    }
}

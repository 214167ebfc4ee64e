package runtrue.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes the lines of an advanced brep, item #200: points, edges and faces get numbers from #1001 on. */
final class BrepText {
    private final StringBuilder text = new StringBuilder();
    private final List<Integer> faces = new ArrayList<>();
    private final double unit;
    private int last = 1000;

    /**
     * @param unit file units in a millimetre
     */
    BrepText(double unit) {
        this.unit = unit;
    }

    static BrepText millimetres() {
        return new BrepText(1);
    }

    int line(String entity) {
        last++;
        text.append('#').append(last).append('=').append(entity).append(";\n");
        return last;
    }

    String real(double value) {
        return String.format(Locale.ROOT, "%.12f", value);
    }

    /** A length in millimetres, as the file writes it. */
    String length(double millimetres) {
        return real(millimetres * unit);
    }

    int point(double x, double y, double z) {
        return line("IFCCARTESIANPOINT((" + length(x) + "," + length(y) + "," + length(z) + "))");
    }

    int vertex(double x, double y, double z) {
        return line("IFCVERTEXPOINT(#" + point(x, y, z) + ")");
    }

    int direction(double x, double y, double z) {
        return line("IFCDIRECTION((" + real(x) + "," + real(y) + "," + real(z) + "))");
    }

    /** Axes at a place; z and x as given. */
    int axes(double x, double y, double z, int axis, int ref) {
        return line("IFCAXIS2PLACEMENT3D(#" + point(x, y, z) + ",#" + axis + ",#" + ref + ")");
    }

    int up(double x, double y, double z) {
        return axes(x, y, z, direction(0, 0, 1), direction(1, 0, 0));
    }

    int edge(int from, int to, int curve) {
        return line("IFCEDGECURVE(#" + from + ",#" + to + ",#" + curve + ",.T.)");
    }

    /** A line whose own place and direction say nothing: an edge takes them from its ends. */
    int straight(int from, int to) {
        return edge(
                from,
                to,
                line("IFCLINE(#" + point(0, 0, 0) + ",#" + line("IFCVECTOR(#" + direction(1, 0, 0) + ",1.)") + ")"));
    }

    /** A bound from edges, the ones run backwards with a minus. */
    String bound(int... edges) {
        StringBuilder list = new StringBuilder();
        for (int edge : edges) {
            int oriented = line("IFCORIENTEDEDGE(*,*,#" + Math.abs(edge) + "," + (edge > 0 ? ".T." : ".F.") + ")");
            list.append(list.isEmpty() ? "#" : ",#").append(oriented);
        }
        return "#" + line("IFCFACEBOUND(#" + line("IFCEDGELOOP((" + list + "))") + ",.T.)");
    }

    void face(int surface, boolean sameSense, String... bounds) {
        faces.add(line("IFCADVANCEDFACE((" + String.join(",", bounds) + "),#" + surface + ","
                + (sameSense ? ".T." : ".F.") + ")"));
    }

    /** Plane faces: the surface's own place does not matter to the polygon. */
    void plane(String... bounds) {
        face(line("IFCPLANE(#" + up(0, 0, 0) + ")"), true, bounds);
    }

    /** Points of a net, by rows, as a nested list. */
    String net(double[][][] rows) {
        StringBuilder list = new StringBuilder("(");
        for (double[][] row : rows) {
            list.append(list.length() == 1 ? "(" : ",(");
            for (int i = 0; i < row.length; i++) {
                list.append(i == 0 ? "#" : ",#").append(point(row[i][0], row[i][1], row[i][2]));
            }
            list.append(')');
        }
        return list.append(')').toString();
    }

    private String all() {
        StringBuilder list = new StringBuilder();
        faces.forEach(face -> list.append(list.isEmpty() ? "#" : ",#").append(face));
        return list.toString();
    }

    String brep() {
        int shell = line("IFCCLOSEDSHELL((" + all() + "))");
        return text + "#200=IFCADVANCEDBREP(#" + shell + ");";
    }

    String open() {
        int shell = line("IFCOPENSHELL((" + all() + "))");
        return text + "#200=IFCSHELLBASEDSURFACEMODEL((#" + shell + "));";
    }

    /** Another item than a brep. */
    String item(String entity) {
        return text + "#200=" + entity + ";";
    }
}

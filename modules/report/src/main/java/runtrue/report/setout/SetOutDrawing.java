package runtrue.report.setout;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import runtrue.result.BodyResult;
import runtrue.result.CheckResult;
import runtrue.result.EdgeResult;
import runtrue.result.Finding;
import runtrue.result.GridLine;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * All roofs of a drop in space, in the models' own coordinates and metres: planes, sheets with their order lengths,
 * supports, edges by kind, penetrations, wind zones, grid and findings, each on a layer of its own. For setting out in a
 * drawing program; lines lie where the skin is.
 */
public final class SetOutDrawing {
    /** Height of capitals, metres: 2.5 mm on paper at 1 to 100. */
    private static final double TEXT = 0.25;

    /** Half the cross that marks a finding, metres. */
    private static final double CROSS = 0.5;

    private final DxfWriter dxf;

    private SetOutDrawing(CheckResult result) {
        List<Point> extent =
                result.planes().stream().flatMap(p -> p.outline().stream()).toList();
        this.dxf = new DxfWriter(comments(result), extent, layers(result));
    }

    /** Writes the drawing and leaves the stream open. The same result gives the same bytes. */
    public static void write(CheckResult result, OutputStream out) throws IOException {
        SetOutDrawing drawing = new SetOutDrawing(result);
        result.planes().forEach(drawing::plane);
        result.edges().forEach(drawing::edge);
        result.bodies().stream().flatMap(b -> b.zones().stream()).forEach(drawing::zone);
        result.gridLines().forEach(drawing::gridLine);
        result.findings().forEach(drawing::finding);
        out.write(drawing.dxf.finished().getBytes(StandardCharsets.US_ASCII));
    }

    private static List<String> comments(CheckResult result) {
        List<String> comments = new ArrayList<>(List.of(
                "Runtrue " + result.toolVersion() + ", " + result.runStamp(),
                "Drop " + result.drop() + ", roof system " + result.roofSystem().title(),
                "Metres, in the coordinates of the model files. Lines lie in the skin of the roof."));
        comments.addAll(result.cautions());
        return comments;
    }

    private static List<Layer> layers(CheckResult result) {
        Set<String> kinds = new TreeSet<>();
        result.edges().forEach(e -> kinds.add(e.kind()));
        return Stream.concat(
                        Stream.of(
                                Layer.PLANES,
                                Layer.PLANE_NAMES,
                                Layer.FALLS,
                                Layer.PENETRATIONS,
                                Layer.SHEETS,
                                Layer.SHEET_LENGTHS,
                                Layer.SUPPORTS,
                                Layer.WIND_ZONES,
                                Layer.GRID,
                                Layer.GRID_NAMES,
                                Layer.FINDINGS),
                        kinds.stream().map(Layer::edge))
                .toList();
    }

    private void plane(PlaneResult plane) {
        SheetPlaces places = new SheetPlaces(plane);
        dxf.ring(Layer.PLANES, plane.outline());
        plane.penetrations().forEach(p -> dxf.ring(Layer.PENETRATIONS, p.outline()));
        PlaneResult.Frame frame = plane.frame();
        double across = Math.atan2(frame.across().y(), frame.across().x());
        for (PlaneResult.Sheet sheet : plane.sheets()) {
            dxf.ring(Layer.SHEETS, places.covered(sheet));
            double u = (sheet.u().fromMetres() + sheet.u().toMetres()) / 2;
            double v = (sheet.v().fromMetres() + sheet.v().toMetres()) / 2;
            String length = String.format(Locale.ROOT, "%.3f", sheet.orderMetres());
            dxf.text(Layer.SHEET_LENGTHS, places.at(u, v), TEXT, across + Math.PI / 2, length);
        }
        plane.supports().stream()
                .flatMap(line -> line.pieces().stream())
                .forEach(piece -> dxf.line(Layer.SUPPORTS, piece.from(), piece.to()));
        name(plane, places, across);
    }

    /** Its name and pitch, and an arrow down the fall; a third of the way up, clear of the lengths of sheets. */
    private void name(PlaneResult plane, SheetPlaces places, double across) {
        List<PlaneResult.Sheet> sheets = plane.sheets();
        if (sheets.isEmpty()) {
            return;
        }
        PlaneResult.Sheet middle = sheets.get(sheets.size() / 2);
        double u = middle.u().fromMetres();
        double low = middle.v().fromMetres() + 0.2 * middle.v().lengthMetres();
        double high = middle.v().fromMetres() + 0.35 * middle.v().lengthMetres();
        String words = String.format(Locale.ROOT, "%s %.2f deg", plane.name(), plane.pitchDegrees());
        dxf.text(Layer.PLANE_NAMES, places.at(u, high), 2 * TEXT, across, words);
        if (plane.azimuthDegrees().isPresent()) {
            dxf.line(Layer.FALLS, places.at(u, high), places.at(u, low));
            dxf.line(Layer.FALLS, places.at(u - TEXT, low + TEXT), places.at(u, low));
            dxf.line(Layer.FALLS, places.at(u + TEXT, low + TEXT), places.at(u, low));
        }
    }

    private void edge(EdgeResult edge) {
        dxf.line(Layer.edge(edge.kind()), edge.from(), edge.to());
    }

    private void zone(BodyResult.Zone zone) {
        zone.regions().forEach(r -> {
            dxf.ring(Layer.WIND_ZONES, r.outline());
            r.holes().forEach(h -> dxf.ring(Layer.WIND_ZONES, h));
        });
    }

    private void gridLine(GridLine line) {
        List<Point> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            dxf.line(Layer.GRID, points.get(i - 1), points.get(i));
        }
        dxf.text(Layer.GRID_NAMES, points.get(0), 2 * TEXT, 0, line.name());
        dxf.text(Layer.GRID_NAMES, points.get(points.size() - 1), 2 * TEXT, 0, line.name());
    }

    private void finding(Finding finding) {
        finding.place().ifPresent(at -> {
            dxf.line(Layer.FINDINGS, moved(at, -CROSS, -CROSS), moved(at, CROSS, CROSS));
            dxf.line(Layer.FINDINGS, moved(at, -CROSS, CROSS), moved(at, CROSS, -CROSS));
            dxf.text(Layer.FINDINGS, moved(at, 0, CROSS + TEXT), TEXT, 0, finding.id() + " " + finding.title());
        });
    }

    private static Point moved(Point from, double x, double y) {
        return new Point(from.xMetres() + x, from.yMetres() + y, from.zMetres());
    }
}

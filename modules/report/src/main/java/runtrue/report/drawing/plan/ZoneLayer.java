package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Type;
import runtrue.result.BodyResult.Region;
import runtrue.result.BodyResult.Zone;
import runtrue.result.Point;

/** Wind zones whose suction is known: a light ground, darker towards the corners, a dotted border, name and suction. */
final class ZoneLayer {
    static final Pen PEN = new Pen(Ink.GREY, 0.18, "0.4 0.8");
    static final String CORNER = Ink.FAINT;
    static final String EDGE = "#eff2f4";

    /** Places within a zone that its label is tried at, along each side. */
    private static final int TRIES = 9;

    /** Smaller zones on paper have no label, square millimetres. */
    private static final double SMALL = 20;

    private final Canvas canvas;

    ZoneLayer(Canvas canvas) {
        this.canvas = canvas;
    }

    void draw(List<Zone> zones) {
        canvas.svg().group("zones");
        for (Zone zone : zones) {
            String ground = switch (zone.kind()) {
                case "corner" -> CORNER;
                case "edge" -> EDGE;
                default -> Ink.WHITE;
            };
            for (Region region : zone.regions()) {
                Path path = new Path();
                rings(region).forEach(path::closed);
                canvas.svg().shape(path, ground, PEN);
                canvas.used(Sign.ZONE);
            }
        }
        canvas.svg().end();
    }

    void label(List<Zone> zones) {
        for (Zone zone : zones) {
            String text = zone.name() + " "
                    + Figures.fixed(zone.uplift().suctionKilopascals().orElse(0), 2);
            for (Region region : zone.regions()) {
                canvas.label(places(rings(region)), Type.QUIET, text);
            }
        }
    }

    private List<List<Vec>> rings(Region region) {
        List<List<Vec>> rings = new ArrayList<>();
        rings.add(onPaper(region.outline()));
        region.holes().forEach(hole -> rings.add(onPaper(hole)));
        return rings;
    }

    private List<Vec> onPaper(List<Point> ring) {
        return ring.stream().map(canvas.view()::at).toList();
    }

    /** Within the zone, nearest to its middle first. */
    private static List<Tilted> places(List<List<Vec>> rings) {
        Box bounds = Box.around(rings.get(0));
        List<Vec> inside = new ArrayList<>();
        for (int i = 1; i < TRIES && bounds.width() * bounds.height() > SMALL; i++) {
            for (int j = 1; j < TRIES; j++) {
                Vec at =
                        new Vec(bounds.left() + bounds.width() * i / TRIES, bounds.top() + bounds.height() * j / TRIES);
                if (within(rings, at)) {
                    inside.add(at);
                }
            }
        }
        inside.sort(
                Comparator.comparingDouble((Vec at) -> at.minus(bounds.centre()).length()));
        return inside.stream().map(at -> Tilted.level(at, 0, 0)).toList();
    }

    /** By how often a line to the right crosses the rings. */
    private static boolean within(List<List<Vec>> rings, Vec at) {
        boolean inside = false;
        for (List<Vec> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Vec a = ring.get(i);
                Vec b = ring.get((i + 1) % ring.size());
                if ((a.y() > at.y()) != (b.y() > at.y())
                        && at.x() < a.x() + (at.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }
}

package runtrue.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import runtrue.roof.Roof.Unplaced;
import runtrue.roof.above.Above;
import runtrue.roof.above.FixtureFinder;
import runtrue.roof.curved.CurvedRoof;
import runtrue.roof.edge.BodyFinder;
import runtrue.roof.edge.Rises;
import runtrue.roof.edge.ZoneReader;
import runtrue.roof.plane.PlaneReader;
import runtrue.roof.sheet.SheetLayout;
import runtrue.roof.support.SpanReader;
import runtrue.roof.support.StretchReader;
import runtrue.roof.support.SupportFinder;

/** The way from read elements to a laid-out roof. */
public final class Roofs {
    private Roofs() {}

    /** Planes, edges, sheets and supports of one drop. Same input, same output, whatever the order of the elements. */
    public static Roof layOut(List<ReadElement> roofs, List<ReadElement> members, RoofSettings settings) {
        return layOut(roofs, members, Surround.NONE, settings);
    }

    /** The same, with what else stands near: walls that planes end against, things that stand above the supports. */
    public static Roof layOut(
            List<ReadElement> roofs, List<ReadElement> members, Surround surround, RoofSettings settings) {
        PlaneReader.Planes read = new PlaneReader(settings).read(roofs);
        CurvedRoof curved = CurvedRoof.of(read.planes(), surround, settings);
        List<Unplaced> unplaced = new ArrayList<>(read.unplaced());
        unplaced.addAll(curved.unplaced());
        List<ReadElement> layers = read.unplaced().stream()
                .filter(Unplaced::counted)
                .map(Unplaced::element)
                .toList();
        SupportFinder supports = new SupportFinder(members, layers, surround, settings);
        List<PlaneLayout> layouts = curved.planes().parallelStream()
                .map(p -> layOut(p, supports, settings))
                .toList();
        Above above = new Above(
                Rises.ofAbutments(curved.planes(), curved.edges(), surround),
                FixtureFinder.find(curved.planes(), surround));
        return new Roof(
                layouts, curved.edges(), BodyFinder.bodies(curved.planes(), curved.edges()), unplaced, settings, above);
    }

    private static PlaneLayout layOut(RoofPlane plane, SupportFinder finder, RoofSettings settings) {
        SupportFinder.Supports supports = finder.below(plane);
        List<Stretch> stretches =
                supports.lines().isEmpty() ? List.of() : StretchReader.of(plane.outline(), supports.lines());
        double joint = settings.tolerances().joint();
        return new PlaneLayout(
                plane,
                SheetLayout.of(plane.outline(), settings.coverWidth(), settings.setOut()),
                supports.lines(),
                stretches,
                CurvedRoof.endsNamed(plane, SpanReader.of(stretches, settings.coverWidth(), joint)),
                supports.bearing(),
                supports.remarks());
    }

    /** Corner, edge and interior zones of one roof body for a zone width in plan (metres). */
    public static List<Zone> zones(Roof roof, RoofBody body, double width) {
        List<Zone> zones = new ArrayList<>();
        ZoneReader reader = new ZoneReader(body, width, roof.settings().coverWidth());
        for (PlaneLayout layout : roof.planes()) {
            if (body.planes().contains(layout.plane().id())) {
                zones.addAll(reader.zones(layout));
            }
        }
        return zones;
    }

    /**
     * A zone that somebody else has drawn.
     *
     * @param width of the strip in plan, metres; 0 where it has no one width
     * @param plan where it lies in plan, metres, moved by the drop origin
     * @return empty where no more than a speck of it lies on the plane
     */
    public static Optional<Zone> zone(
            Roof roof, RoofBody body, PlaneLayout layout, ZoneKind kind, double width, Geometry plan) {
        return ZoneReader.zone(body, layout, kind, width, plan, roof.settings().coverWidth());
    }
}

package runtrue.roof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import runtrue.roof.Roof.Unplaced;
import runtrue.roof.edge.BodyFinder;
import runtrue.roof.edge.CurvedRoofs;
import runtrue.roof.edge.EdgeFinder;
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
        PlaneReader.Planes read = new PlaneReader(settings).read(roofs);
        List<RoofEdge> edges = new EdgeFinder(settings.tolerances()).edges(read.planes());
        List<Unplaced> unplaced = new ArrayList<>(read.unplaced());
        Set<String> facets = new HashSet<>();
        for (Set<String> curved : CurvedRoofs.facets(read.planes(), settings.tolerances())) {
            facets.addAll(curved);
            unplaced.addAll(setAside(read.planes(), curved));
        }
        List<RoofPlane> planes =
                read.planes().stream().filter(p -> !facets.contains(p.id())).toList();
        List<RoofEdge> kept = edges.stream().flatMap(e -> without(facets, e)).toList();
        SupportFinder supports = new SupportFinder(members, settings);
        List<PlaneLayout> layouts =
                planes.parallelStream().map(p -> layOut(p, supports, settings)).toList();
        return new Roof(layouts, kept, BodyFinder.bodies(planes, kept), unplaced, settings);
    }

    /** An edge with the planes that are laid out: one shared with a facet is still an edge of the plane beside it. */
    private static Stream<RoofEdge> without(Set<String> facets, RoofEdge e) {
        List<String> planes =
                e.planes().stream().filter(p -> !facets.contains(p)).toList();
        return planes.isEmpty()
                ? Stream.empty()
                : Stream.of(new RoofEdge(e.id(), e.kind(), planes, e.from(), e.to(), e.length(), e.angle()));
    }

    /** The elements of a curved roof, each once, with how large it is. */
    private static List<Unplaced> setAside(List<RoofPlane> planes, Set<String> curved) {
        List<RoofPlane> facets =
                planes.stream().filter(p -> curved.contains(p.id())).toList();
        double area = facets.stream().mapToDouble(RoofPlane::area).sum();
        String reason = String.format(
                Locale.ROOT,
                "curved roof of %d facets, together about %.1f m2: it has no single fall, so its sheets are not laid out",
                facets.size(),
                area);
        Set<ReadElement> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Unplaced> unplaced = new ArrayList<>();
        for (RoofPlane facet : facets) {
            for (ReadElement element : facet.elements()) {
                if (seen.add(element)) {
                    unplaced.add(new Unplaced(element, reason));
                }
            }
        }
        return unplaced;
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
                SpanReader.of(stretches, settings.coverWidth(), joint),
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
}

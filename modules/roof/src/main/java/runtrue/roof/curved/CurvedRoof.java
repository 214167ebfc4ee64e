package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof.Unplaced;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.Span;
import runtrue.roof.SpanKind;
import runtrue.roof.Surround;
import runtrue.roof.edge.CurvedRoofs;
import runtrue.roof.edge.EdgeFinder;
import runtrue.roof.plane.NarrowPlanes;
import runtrue.roof.plane.PlaneNames;

/**
 * Planes and edges of a roof with facets of barrels made to curved planes, and elements of other curved roofs set aside
 * with the reason.
 */
public record CurvedRoof(List<RoofPlane> planes, List<RoofEdge> edges, List<Unplaced> unplaced) {
    public CurvedRoof {
        planes = List.copyOf(planes);
        edges = List.copyOf(edges);
        unplaced = List.copyOf(unplaced);
    }

    /** What becomes of planes, some of which may be facets. */
    public static CurvedRoof of(List<RoofPlane> planes, Surround surround, RoofSettings settings) {
        CurvedReader reader = new CurvedReader(settings);
        List<RoofPlane> made = new ArrayList<>();
        List<RoofPlane> left = new ArrayList<>();
        List<Unplaced> unplaced = new ArrayList<>();
        Set<String> facetIds = new HashSet<>();
        for (Set<String> ids : CurvedRoofs.facets(planes, settings.tolerances())) {
            List<RoofPlane> facets =
                    planes.stream().filter(p -> ids.contains(p.id())).toList();
            List<RoofPlane> curved = reader.read(facets);
            facetIds.addAll(ids);
            made.addAll(curved);
            if (curved.isEmpty()) {
                left.addAll(facets);
                unplaced.addAll(setAside(facets));
            }
        }
        List<RoofPlane> curved = PlaneNames.named(made);
        List<RoofPlane> flat =
                planes.stream().filter(p -> !facetIds.contains(p.id())).toList();
        List<RoofPlane> facets =
                planes.stream().filter(p -> facetIds.contains(p.id())).toList();
        NarrowPlanes wide = NarrowPlanes.of(flat, facets, settings.tolerances().joint());
        unplaced.addAll(wide.unplaced());
        boolean all = wide.kept().size() == flat.size();
        List<RoofPlane> laidOut =
                byId(Stream.concat((all ? flat : PlaneNames.named(wide.kept())).stream(), curved.stream()));
        return new CurvedRoof(laidOut, edges(laidOut, curved, left, surround, settings), unplaced);
    }

    private static List<RoofPlane> byId(Stream<RoofPlane> planes) {
        return planes.sorted(Comparator.comparing(RoofPlane::id)).toList();
    }

    private static List<RoofEdge> edges(
            List<RoofPlane> laidOut,
            List<RoofPlane> curved,
            List<RoofPlane> setAside,
            Surround surround,
            RoofSettings settings) {
        List<RoofPlane> all = byId(Stream.concat(laidOut.stream(), setAside.stream()));
        Set<String> gone = setAside.stream().map(RoofPlane::id).collect(Collectors.toSet());
        List<RoofEdge> edges = new EdgeFinder(settings.tolerances(), surround)
                .edges(all).stream().flatMap(e -> without(gone, e)).toList();
        if (curved.isEmpty()) {
            return edges;
        }
        double joint = settings.tolerances().joint();
        return EdgeFinder.identified(new CurvedEdges(curved, joint).joined(edges));
    }

    /** An edge with the planes that are laid out: one shared with a facet is still an edge of the plane beside it. */
    private static Stream<RoofEdge> without(Set<String> gone, RoofEdge e) {
        List<String> planes = e.planes().stream().filter(p -> !gone.contains(p)).toList();
        return planes.isEmpty() ? Stream.empty() : Stream.of(e.withPlanes(planes));
    }

    /** The elements of a curved roof, each once. */
    private static Collection<Unplaced> setAside(List<RoofPlane> facets) {
        String reason = Surfaces.describe(facets);
        Set<ReadElement> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        return facets.stream()
                .flatMap(f -> f.elements().stream())
                .filter(seen::add)
                .map(e -> new Unplaced(e, reason))
                .toList();
    }

    /** Spans with overhangs named after the edges of a curved plane, which may have eaves at both ends of its arc. */
    public static List<Span> endsNamed(RoofPlane plane, List<Span> spans) {
        return plane.curve()
                .map(curve -> spans.stream().map(s -> endNamed(curve, s)).toList())
                .orElse(spans);
    }

    private static Span endNamed(Curve curve, Span s) {
        SpanKind kind = switch (s.kind()) {
            case EAVE_OVERHANG -> curve.isLowAtStart() ? s.kind() : SpanKind.RIDGE_OVERHANG;
            case RIDGE_OVERHANG -> curve.isLowAtEnd() ? SpanKind.EAVE_OVERHANG : s.kind();
            case END_SPAN, INTERNAL_SPAN -> s.kind();
        };
        return new Span(kind, s.length(), s.least(), s.u(), s.v(), s.lower(), s.upper());
    }
}

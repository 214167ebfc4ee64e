package runtrue.bill.count;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import runtrue.roof.Interval;
import runtrue.roof.Penetration;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;
import runtrue.roof.SupportLine;
import runtrue.rules.OrderLengths;
import runtrue.rules.buildup.CountedOn;
import runtrue.rules.cel.Facts;

/** One plane taken apart into what items are counted on, with the facts of each. */
public final class PlaneSubjects {
    private static final double MILLIMETRE = 1e-3;
    private static final String OUTLINE = "outline of the plane";

    private final PlaneLayout layout;
    private final RoofPlane plane;
    private final OrderLengths lengths;
    private final Optional<Ribs> ribs;
    private final ZoneMap zones;
    private final Facts facts;
    private final List<Crossings.Crossing> crossings;

    /**
     * Prepares.
     *
     * @param ribs empty when the system states no clip spacing
     * @param drop facts that the plane's are laid upon
     */
    PlaneSubjects(PlaneLayout layout, OrderLengths lengths, Optional<Ribs> ribs, ZoneMap zones, Facts drop) {
        this.layout = layout;
        this.plane = layout.plane();
        this.lengths = lengths;
        this.ribs = ribs;
        this.zones = zones;
        crossings = ribs.map(r -> Crossings.of(plane.outline(), r.all(), layout.supports()))
                .orElse(List.of());
        facts = facts(drop.inner());
    }

    /** The plane as laid out. */
    public PlaneLayout layout() {
        return layout;
    }

    private Facts facts(Facts inner) {
        Envelope box = plane.outline().getEnvelopeInternal();
        inner.know("plane.name", plane.name(), "")
                .know("plane.pitch", plane.pitch(), "")
                .know("plane.curved", plane.curve().isPresent(), "")
                .know("plane.area", plane.area(), OUTLINE)
                .know("plane.gross_area", plane.grossArea(), OUTLINE)
                .know("plane.plan_area", plane.planArea(), OUTLINE)
                .know("plane.width_across", box.getWidth(), OUTLINE)
                .know("plane.length_along", box.getHeight(), OUTLINE)
                .know("plane.sheets", layout.sheets().size(), "")
                .know("plane.support_lines", layout.supports().size(), "");
        if (layout.supports().isEmpty()) {
            inner.miss("plane.support_length", "is not known: no supports were found");
        } else {
            double length = layout.supports().stream()
                    .flatMap(line -> runs(line).stream())
                    .mapToDouble(r -> r)
                    .sum();
            inner.know("plane.support_length", length, "");
        }
        ribs.ifPresentOrElse(
                r -> inner.know("plane.ribs", r.all().size(), ""),
                () -> inner.miss("plane.ribs", "is not known: the roof system states no clip_spacing"));
        return inner;
    }

    /** Why there is nothing of that kind where there should be; empty when nothing is amiss. */
    Optional<String> lacking(CountedOn on) {
        boolean onSupports = on == CountedOn.SUPPORT_LINE_ON_PLANE
                || on == CountedOn.RIB_ON_SUPPORT
                || on == CountedOn.SUPPORT_CROSSING;
        if (onSupports && layout.supports().isEmpty()) {
            return Optional.of("no support lines were found" + remarks());
        } else if (on == CountedOn.RIB_ON_SUPPORT && ribs.isEmpty()) {
            return Optional.of("the roof system states no clip_spacing");
        } else if (on == CountedOn.SHEET && layout.sheets().isEmpty()) {
            return Optional.of("no sheets were laid out" + remarks());
        }
        return Optional.empty();
    }

    /** Everything of the plane that an item is counted on. */
    public List<Subject> of(CountedOn on) {
        return switch (on) {
            case PLANE -> List.of(subject("", facts, 1, "", List.of(), List.of(plane.id())));
            case SHEET -> layout.sheets().stream().map(this::sheet).toList();
            case SUPPORT_LINE_ON_PLANE ->
                layout.supports().stream().map(this::line).toList();
            case SUPPORT_CROSSING -> sheetsOnSupports();
            case RIB_ON_SUPPORT -> ribsOnSupports();
            case PENETRATION -> plane.penetrations().stream().map(this::hole).toList();
            case DROP, EDGE -> List.of();
        };
    }

    /** Where support lines cross the middle of a sheet, v in metres, rising. */
    public List<Double> supportsUnder(Sheet sheet) {
        double middle = (sheet.u().from() + sheet.u().to()) / 2;
        return layout.supports().stream()
                .filter(line -> line.extents().stream().anyMatch(e -> e.contains(middle)))
                .map(line -> Crossings.v(line, middle))
                .filter(sheet.v()::contains)
                .sorted()
                .toList();
    }

    /** A sheet of another width than the roof's: what the roof sheet is ordered in says nothing of it. */
    public Subject otherSheet(Sheet sheet) {
        Facts own = sheetFacts(sheet).miss("sheet.order_length", "is known of the roof's own sheets only");
        return subject("sheet " + sheet.number(), own, 1, "", List.of(), List.of(plane.id()));
    }

    private Subject sheet(Sheet sheet) {
        Facts own = sheetFacts(sheet).know("sheet.order_length", lengths.of(sheet), lengths.method());
        return subject("sheet " + sheet.number(), own, 1, "", List.of(), List.of(plane.id()));
    }

    private Facts sheetFacts(Sheet sheet) {
        return facts.inner()
                .know("sheet.number", sheet.number(), "")
                .know("sheet.length", sheet.blank(), "")
                .know("sheet.width", sheet.u().length(), "")
                .know("sheet.area", sheet.area(), "")
                .know("sheet.trimmed", sheet.trimmed(), "")
                .know("sheet.tapered", sheet.tapered(), "")
                .know("sheet.cut", sheet.cut(), "");
    }

    private Subject line(SupportLine line) {
        List<Double> runs = runs(line);
        return subject("line " + line.number(), lineFacts(facts, line, runs), 1, "", runs, List.of(line.id()));
    }

    private Facts lineFacts(Facts outer, SupportLine line, List<Double> runs) {
        Facts own = outer.inner()
                .know("support.line", line.number(), "")
                .know("support.length", runs.stream().mapToDouble(r -> r).sum(), "");
        if (ribs.isPresent()) {
            long over = crossings.stream().filter(c -> c.line().equals(line)).count();
            own.know("support.ribs", (double) over, "");
        } else {
            own.miss("support.ribs", "is not known: the roof system states no clip_spacing");
        }
        return own;
    }

    private List<Subject> sheetsOnSupports() {
        List<Subject> all = new ArrayList<>();
        for (Sheet sheet : layout.sheets()) {
            Facts own = sheetFacts(sheet).know("sheet.order_length", lengths.of(sheet), lengths.method());
            for (SupportLine line : layout.supports()) {
                double middle = (sheet.u().from() + sheet.u().to()) / 2;
                boolean over = sheet.v().contains(Crossings.v(line, middle))
                        && line.extents().stream().anyMatch(e -> e.contains(middle));
                if (over) {
                    all.add(subject(
                            "sheet " + sheet.number() + " on line " + line.number(),
                            lineFacts(own, line, runs(line)),
                            1,
                            "",
                            List.of(),
                            List.of(line.id())));
                }
            }
        }
        return all;
    }

    /** Those of one line, zone and place at the edge are alike and stand together. */
    private List<Subject> ribsOnSupports() {
        record Alike(SupportLine line, String zone, boolean atEdge) {}
        Map<Alike, Integer> counts = new LinkedHashMap<>();
        for (Crossings.Crossing c : crossings) {
            counts.merge(new Alike(c.line(), zones.at(c.u(), c.v()), c.atEdge()), 1, Integer::sum);
        }
        List<Subject> all = new ArrayList<>();
        counts.forEach((alike, count) -> {
            Facts own = lineFacts(facts, alike.line(), runs(alike.line())).know("rib.at_edge", alike.atEdge(), "");
            if (alike.zone().isEmpty()) {
                own.miss("rib.zone", "is not known: no edge zones were formed");
            } else {
                own.know("rib.zone", alike.zone(), "");
            }
            all.add(subject(
                    "ribs on line " + alike.line().number(),
                    own,
                    count,
                    alike.zone(),
                    List.of(),
                    List.of(alike.line().id())));
        });
        return all;
    }

    private Subject hole(Penetration hole) {
        double around = hole.outline().getExteriorRing().getLength();
        Facts own = facts.inner()
                .know("penetration.width", hole.width(), "")
                .know("penetration.length", hole.length(), "")
                .know("penetration.area", hole.area(), "")
                .know("penetration.perimeter", around, "");
        List<Double> sides = List.of(hole.width(), hole.width(), hole.length(), hole.length());
        return subject("opening " + hole.id(), own, 1, "", sides, List.of(hole.id()));
    }

    /** Stretches of a support line under the plane, metres: gaps between members and openings break it. */
    private List<Double> runs(SupportLine line) {
        List<Double> runs = new ArrayList<>();
        for (Interval extent : line.extents()) {
            LineString along = plane.outline().getFactory().createLineString(new Coordinate[] {
                new Coordinate(extent.from(), Crossings.v(line, extent.from())),
                new Coordinate(extent.to(), Crossings.v(line, extent.to()))
            });
            Geometry under = along.intersection(plane.outline());
            for (int i = 0; i < under.getNumGeometries(); i++) {
                double length = under.getGeometryN(i).getLength();
                if (length > MILLIMETRE) {
                    runs.add(length);
                }
            }
        }
        return runs;
    }

    private Subject subject(String part, Facts own, int times, String zone, List<Double> runs, List<String> from) {
        String name = part.isEmpty() ? "plane " + plane.name() : part + " of plane " + plane.name();
        return new Subject(plane.id(), List.of(), name, own, times, zone, runs, from);
    }

    private String remarks() {
        return layout.remarks().isEmpty() ? "" : " (" + String.join("; ", layout.remarks()) + ")";
    }
}

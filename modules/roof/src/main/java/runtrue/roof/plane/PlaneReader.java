package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof.Unplaced;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.skin.SkinFace;
import runtrue.roof.skin.SkinReader;

/** From roof elements to measured and named planes. */
public final class PlaneReader {
    private final RoofSettings settings;

    public PlaneReader(RoofSettings settings) {
        this.settings = settings;
    }

    /** Planes by id, and the elements that gave none, with the reason. */
    public Planes read(List<ReadElement> elements) {
        List<SkinFace> faces = new ArrayList<>();
        List<Unplaced> unplaced = new ArrayList<>();
        Set<ReadElement> lookUp = Collections.newSetFromMap(new IdentityHashMap<>());
        List<List<SkinFace>> skins = new SkinReader(settings.tolerances()).read(elements);
        for (int i = 0; i < elements.size(); i++) {
            ReadElement element = elements.get(i);
            List<SkinFace> skin = skins.get(i);
            faces.addAll(skin);
            if (!skin.isEmpty()) {
                lookUp.add(element);
            } else {
                unplaced.add(new Unplaced(element, "no face looks upward: nothing that sheets could lie on"));
            }
        }
        List<JoinedPlane> joined = new PlaneJoiner(settings.tolerances()).join(faces);
        Set<ReadElement> hidden = Collections.newSetFromMap(new IdentityHashMap<>());
        List<JoinedPlane> outer = new StackedLayers(settings.tolerances())
                .outermost(joined, plane -> plane.faces().forEach(f -> hidden.add(f.source())));
        List<RoofPlane> planes =
                PlaneNames.named(outer.stream().map(this::measured).toList());
        Set<ReadElement> used = Collections.newSetFromMap(new IdentityHashMap<>());
        planes.forEach(p -> used.addAll(p.elements()));
        for (ReadElement element : elements) {
            if (hidden.contains(element) && !used.contains(element)) {
                unplaced.add(
                        new Unplaced(element, "lies under another layer of the roof and is counted with it", true));
            } else if (lookUp.contains(element) && !used.contains(element)) {
                unplaced.add(new Unplaced(element, "its upward faces are too small to be roof"));
            }
        }
        return new Planes(planes, unplaced);
    }

    /** What {@link #read} gives. */
    public record Planes(List<RoofPlane> planes, List<Unplaced> unplaced) {
        public Planes {
            planes = List.copyOf(planes);
            unplaced = List.copyOf(unplaced);
        }
    }

    private RoofPlane measured(JoinedPlane joined) {
        Envelope extent = joined.outline().getEnvelopeInternal();
        PlaneFrame frame = PlaneFrames.startingAt(joined.frame(), extent);
        Polygon outline = (Polygon) AffineTransformation.translationInstance(-extent.getMinX(), -extent.getMinY())
                .transform(joined.outline());
        double pitch = Math.acos(Math.min(1, frame.normal().getZ()));
        boolean level = pitch < settings.tolerances().angle();
        OptionalDouble azimuth = level ? OptionalDouble.empty() : OptionalDouble.of(Bearings.downslope(frame));
        OptionalDouble fromTrueNorth = level || settings.trueNorth().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Bearings.turn(
                        Bearings.downslope(frame) - settings.trueNorth().getAsDouble()));
        double area = outline.getArea();
        double gross = Outlines.shell(outline).getArea();
        Set<ReadElement> sources = Collections.newSetFromMap(new IdentityHashMap<>());
        joined.faces().forEach(f -> sources.add(f.source()));
        List<ReadElement> elements = Bearings.ordered(sources);
        double[] levels = levels(outline, frame);
        ReadElement main = joined.faces().get(0).source();
        return new RoofPlane(
                "",
                "",
                frame,
                outline,
                pitch,
                azimuth,
                fromTrueNorth,
                area,
                gross,
                area * Math.cos(pitch),
                gross * Math.cos(pitch),
                levels[0],
                levels[1],
                thickness(joined.faces()),
                main.element().building(),
                main.element().storey(),
                Penetrations.of(outline),
                elements,
                joined.faces().stream()
                        .map(SkinFace::remark)
                        .filter(r -> !r.isEmpty())
                        .distinct()
                        .toList(),
                Optional.empty());
    }

    private double[] levels(Polygon outline, PlaneFrame frame) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Coordinate c : outline.getExteriorRing().getCoordinates()) {
            Vector3D p = frame.at(c.x, c.y);
            low = Math.min(low, p.getZ());
            high = Math.max(high, p.getZ());
        }
        return new double[] {
            low + settings.origin().getZ(), high + settings.origin().getZ()
        };
    }

    private static OptionalDouble thickness(List<SkinFace> faces) {
        return faces.stream().flatMapToDouble(f -> f.thickness().stream()).max();
    }
}

package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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
        List<List<SkinFace>> skins = new SkinReader(settings.tolerances()).read(elements);
        List<JoinedPlane> joined = new PlaneJoiner(settings.tolerances())
                .join(skins.stream().flatMap(List::stream).toList());
        Set<ReadElement> hidden = Collections.newSetFromMap(new IdentityHashMap<>());
        List<JoinedPlane> outer = new StackedLayers(settings.tolerances())
                .outermost(joined, plane -> plane.faces().forEach(f -> hidden.add(f.source())));
        PlaneMeasures measures = new PlaneMeasures(settings);
        List<RoofPlane> planes =
                PlaneNames.named(outer.stream().map(measures::of).toList());
        Set<ReadElement> used = Collections.newSetFromMap(new IdentityHashMap<>());
        planes.forEach(p -> used.addAll(p.elements()));
        List<Unplaced> unplaced = new ArrayList<>();
        for (int i = 0; i < elements.size(); i++) {
            if (!used.contains(elements.get(i))) {
                unplaced.add(unplaced(elements.get(i), skins.get(i), hidden));
            }
        }
        return new Planes(planes, unplaced);
    }

    private Unplaced unplaced(ReadElement element, List<SkinFace> skin, Set<ReadElement> hidden) {
        if (skin.isEmpty()) {
            return new Unplaced(
                    element, "no face looks upward: nothing that sheets could lie on" + Unplaced.OR_EXCLUDE);
        }
        return hidden.contains(element)
                ? new Unplaced(element, "lies under another layer of the roof and is counted with it", true)
                : tooSmall(element, skin);
    }

    /** A packer or an offcut is no gap in the roof; a surface in a thousand pieces is one. */
    private Unplaced tooSmall(ReadElement element, List<SkinFace> skin) {
        double area = skin.stream().mapToDouble(SkinFace::area).sum();
        double least = settings.tolerances().sliver();
        if (area <= least) {
            return new Unplaced(
                    element,
                    String.format(
                            Locale.ROOT,
                            "looks upward with %.3f m2 in all, and less than %.2f m2 is no roof: a packer or an offcut",
                            area,
                            least),
                    true);
        }
        return new Unplaced(
                element,
                String.format(
                        Locale.ROOT,
                        "looks upward with %.2f m2 in all, but in no plane of more than %.2f m2 (%d faces); export it"
                                + " with larger faces",
                        area,
                        least,
                        skin.size()));
    }

    /** What {@link #read} gives. */
    public record Planes(List<RoofPlane> planes, List<Unplaced> unplaced) {
        public Planes {
            planes = List.copyOf(planes);
            unplaced = List.copyOf(unplaced);
        }
    }
}

package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Type;
import runtrue.result.EdgeResult;

/** Edges in their kinds, with true lengths. */
final class EdgeLayer {
    private final Canvas canvas;
    private final List<Patch> patches;

    EdgeLayer(Canvas canvas, List<Patch> patches) {
        this.canvas = canvas;
        this.patches = patches;
    }

    void draw(List<EdgeResult> edges) {
        canvas.svg().group("edges");
        for (EdgeResult edge : edges) {
            Vec from = canvas.view().at(edge.from());
            Vec to = canvas.view().at(edge.to());
            canvas.svg().group("edge " + edge.kind().toLowerCase(Locale.ROOT).replace(' ', '-'), edge.id());
            EdgeLook.of(edge.kind()).draw(canvas.svg(), from, to, outward(edge, from, to));
            canvas.svg().end();
            canvas.board().take(Tilted.around(from, to, 1.2));
            canvas.usedEdge(edge.kind());
        }
        canvas.svg().end();
    }

    /** The longest first: what does not fit is the least. */
    void label(List<EdgeResult> edges) {
        boolean[] all = {true};
        edges.stream()
                .sorted(Comparator.comparingDouble(EdgeResult::lengthMetres)
                        .reversed()
                        .thenComparing(EdgeResult::id))
                .forEach(e -> all[0] &= label(e));
        if (!all[0]) {
            canvas.leftOut("Lengths of some edges find no room: see Edges in quantities.xlsx.");
        }
    }

    private boolean label(EdgeResult edge) {
        Vec from = canvas.view().at(edge.from());
        Vec to = canvas.view().at(edge.to());
        double room = to.minus(from).length() + 2;
        String length = Figures.metres(edge.lengthMetres());
        Type type = Type.SMALL_BOLD.in(EdgeLook.of(edge.kind()).pen().colour());
        List<Tilted> places = places(from, to, outward(edge, from, to));
        String step = edge.stepMetres().isPresent()
                ? String.format(
                        Locale.ROOT, " %.0f mm, ", 1000 * edge.stepMetres().getAsDouble())
                : " ";
        for (String text : List.of(edge.kind() + step + length, edge.kind() + " " + length, length)) {
            if (type.width(text) <= room && canvas.label(places, type, text)) {
                return true;
            }
        }
        return false;
    }

    private static List<Tilted> places(Vec from, Vec to, Vec outward) {
        List<Tilted> places = new ArrayList<>();
        for (double offset : new double[] {2.7, -2.4}) {
            for (double share : new double[] {0.5, 0.38, 0.62, 0.27, 0.73, 0.18, 0.82}) {
                Vec centre = from.towards(to, share).plus(outward.times(offset));
                places.add(new Tilted(centre, to.minus(from).unit(), 0, 0));
            }
        }
        return places;
    }

    private Vec outward(EdgeResult edge, Vec from, Vec to) {
        Vec side = to.minus(from).unit().turned();
        Vec trial = from.towards(to, 0.5).plus(side.times(0.5));
        boolean inside =
                patches.stream().anyMatch(p -> edge.planes().contains(p.plane().id()) && p.contains(trial));
        return inside ? side.times(-1) : side;
    }
}

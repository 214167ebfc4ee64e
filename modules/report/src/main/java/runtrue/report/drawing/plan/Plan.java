package runtrue.report.drawing.plan;

import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.result.GridLine;

/** Draws a roof from above: first what has one place only, then labels in the order of their weight. */
public final class Plan {
    private Plan() {}

    /** Draws onto the canvas, within its board. */
    public static void draw(Canvas canvas, Roof roof, List<GridLine> grid) {
        List<Patch> patches =
                roof.planes().stream().map(p -> Patch.of(p, canvas.view())).toList();
        EdgeLayer edges = new EdgeLayer(canvas, patches);
        LongSpans longSpans = new LongSpans(canvas, patches, roof.marks());
        StripLayer strips = new StripLayer(canvas);
        SupportLayer supports = new SupportLayer(canvas);
        PenetrationLayer penetrations = new PenetrationLayer(canvas);
        ZoneLayer zones = new ZoneLayer(canvas);
        MarkLayer marks = new MarkLayer(canvas, patches);

        new GridLayer(canvas, extent(patches)).draw(grid);
        planes(canvas, patches);
        zones.draw(roof.zones());
        longSpans.draw();
        strips.draw(patches);
        supports.draw(patches);
        penetrations.draw(patches);
        edges.draw(roof.edges());

        marks.place(roof.marks());
        longSpans.label();
        new PlaneLabels(canvas).label(patches);
        new SpanLayer(canvas).draw(patches);
        edges.label(roof.edges());
        penetrations.label(patches);
        zones.label(roof.zones());
        strips.label(patches);
        supports.label(patches);
        canvas.flushLabels();
        marks.draw();
    }

    private static void planes(Canvas canvas, List<Patch> patches) {
        canvas.svg().group("planes");
        for (Patch patch : patches) {
            canvas.svg()
                    .shape("plane", patch.plane().id(), Path.ring(patch.outline()), Ink.WHITE, Pen.of(Ink.GREY, 0.13));
        }
        canvas.svg().end();
    }

    private static Box extent(List<Patch> patches) {
        return Box.around(patches.stream().flatMap(p -> p.outline().stream()).toList());
    }
}

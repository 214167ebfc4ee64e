package runtrue.roof;

import java.util.List;
import runtrue.roof.bearing.Bearing;

/**
 * A plane with its sheets and supports. Support lines and spans are empty when no support was found; the reason stands
 * in {@code remarks}.
 */
public record PlaneLayout(
        RoofPlane plane,
        List<Sheet> sheets,
        List<SupportLine> supports,
        List<Stretch> stretches,
        List<Span> spans,
        Bearing bearing,
        List<String> remarks) {
    /** One whose bearing is not known. */
    public PlaneLayout(
            RoofPlane plane,
            List<Sheet> sheets,
            List<SupportLine> supports,
            List<Stretch> stretches,
            List<Span> spans,
            List<String> remarks) {
        this(plane, sheets, supports, stretches, spans, Bearing.unknown(), remarks);
    }

    public PlaneLayout {
        sheets = List.copyOf(sheets);
        supports = List.copyOf(supports);
        stretches = List.copyOf(stretches);
        spans = List.copyOf(spans);
        remarks = List.copyOf(remarks);
    }

    /** Longest sheet, metres; 0 when there is none. */
    public double longestRun() {
        return sheets.stream().mapToDouble(Sheet::length).max().orElse(0);
    }
}

package runtrue.roof;

import java.util.List;

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
        List<String> remarks) {
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

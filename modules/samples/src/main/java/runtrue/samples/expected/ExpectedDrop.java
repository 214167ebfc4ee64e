package runtrue.samples.expected;

import java.util.List;
import java.util.Map;

/**
 * What a drop should give.
 *
 * @param folder below sample-models/, also the heading in its README
 * @param edgeTotals metres by kind of edge, in the words of the README ({@code box gutter}); shared edges once
 */
public record ExpectedDrop(
        String folder, List<ExpectedPlane> planes, Map<String, Double> edgeTotals, List<ExpectedFinding> findings) {
    public ExpectedDrop {
        planes = List.copyOf(planes);
        edgeTotals = Map.copyOf(edgeTotals);
        findings = List.copyOf(findings);
    }
}

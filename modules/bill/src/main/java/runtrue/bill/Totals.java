package runtrue.bill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sums lines of the same thing over planes. */
final class Totals {
    private record Same(String item, String description, String unit, double length) {}

    private Totals() {}

    static List<BillLine> of(List<BillLine> lines) {
        Map<Same, List<BillLine>> groups = new LinkedHashMap<>();
        for (BillLine line : lines) {
            groups.computeIfAbsent(
                            new Same(line.item(), line.description(), line.unit(), line.length()),
                            same -> new ArrayList<>())
                    .add(line);
        }
        List<BillLine> totals = new ArrayList<>();
        groups.forEach((same, of) -> {
            Set<String> planes = new LinkedHashSet<>();
            of.forEach(line -> planes.add(line.plane()));
            double sum = of.stream().mapToDouble(BillLine::quantity).sum();
            totals.add(new BillLine(
                    same.item(),
                    same.description(),
                    "",
                    sum,
                    same.unit(),
                    same.length(),
                    "sum over " + planes.size() + (planes.size() == 1 ? " plane" : " planes"),
                    List.copyOf(planes)));
        });
        return totals;
    }
}

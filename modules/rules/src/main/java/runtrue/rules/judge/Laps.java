package runtrue.rules.judge;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.Sheet;
import runtrue.roof.sheet.LapPlan;
import runtrue.rules.OrderLengths;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.judge.subject.Subject;

/** Says where a sheet that is too long could be lapped, and what that costs. */
final class Laps {
    private final Roof roof;
    private final RoofSystem system;
    private final double lap;

    Laps(Roof roof, RoofSystem system) {
        this.roof = roof;
        this.system = system;
        lap = system.si("end_lap").orElse(0.0);
    }

    /** One sentence; empty when the subject is no sheet or the limit no length that is known. */
    String sentence(Judged judged) {
        Subject subject = judged.subject();
        Optional<Quantity> limit = judged.verdict().limit();
        if (subject.kind() != SubjectKind.SHEET || limit.isEmpty()) {
            return "";
        }
        Optional<PlaneLayout> layout = roof.planes().stream()
                .filter(l -> l.plane().id().equals(subject.plane()))
                .findFirst();
        Optional<Sheet> sheet = layout.flatMap(l -> l.sheets().stream()
                .filter(s -> s.number() == subject.number())
                .max(Comparator.comparingDouble(Sheet::length)));
        if (sheet.isEmpty()) {
            return "";
        }
        Interval extent = new OrderLengths(layout.get(), roof.edges(), system).extent(sheet.get());
        return LapPlan.of(extent, layout.get().supports(), limit.get().si(), lap)
                .map(this::told)
                .orElse("No support lies where laps could make the pieces short enough.");
    }

    private String told(LapPlan plan) {
        String lines = plan.lines().stream().map(String::valueOf).collect(Collectors.joining(", "));
        String pieces = plan.pieces().stream()
                .map(p -> String.format(Locale.ROOT, "%.2f", p))
                .collect(Collectors.joining(", "));
        String cost = lap > 0
                ? String.format(
                        Locale.ROOT,
                        ", %.2f m more for each sheet",
                        lap * plan.lines().size())
                : ", the laps not added: the roof system states no end_lap";
        return "Laps on support line" + (plan.lines().size() == 1 ? " " : "s ") + lines + " would leave " + pieces
                + " m from the eave up" + cost + ".";
    }
}

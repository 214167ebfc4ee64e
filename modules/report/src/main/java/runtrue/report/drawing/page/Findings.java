package runtrue.report.drawing.page;

import java.util.List;
import java.util.stream.Collectors;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.plan.Mark;
import runtrue.report.drawing.plan.MarkLayer;
import runtrue.report.drawing.plan.Roof;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;
import runtrue.result.Finding;
import runtrue.result.Measure;
import runtrue.result.Outcome;

/** What the marks stand for, as many as there is room for. */
final class Findings {
    private static final double ROW = 7.8;
    private static final double INDENT = 8;

    private final Svg svg;

    Findings(Svg svg) {
        this.svg = svg;
    }

    void draw(Box box, List<Mark> marks) {
        int room = (int) Math.floor(box.height() / ROW);
        int shown = marks.size() <= room ? marks.size() : Math.max(0, room - 1);
        double y = box.top();
        for (Mark mark : marks.subList(0, shown)) {
            row(box, y, mark);
            y += ROW;
        }
        if (shown < marks.size()) {
            svg.text(
                    new Vec(box.left() + INDENT, y + 3),
                    Anchor.START,
                    Type.SMALL_BOLD,
                    "and " + (marks.size() - shown) + " more: see non-conformances.xlsx");
        }
        if (marks.isEmpty()) {
            svg.lines(
                    new Vec(box.left(), box.top() + 2.2),
                    box.width(),
                    3,
                    Type.SMALL,
                    "None on the planes of this drawing. What concerns the whole drop, or could not be read, stands in"
                            + " non-conformances.xlsx.");
        }
    }

    private void row(Box box, double y, Mark mark) {
        MarkLayer.draw(svg, new Vec(box.left() + 3, y + 2.9), mark.outcome(), mark.sign());
        double width = box.width() - INDENT;
        svg.text(
                new Vec(box.left() + INDENT, y + 2.4),
                Anchor.START,
                Type.SMALL_BOLD,
                Svg.cut(first(mark), width, Type.SMALL_BOLD));
        svg.text(
                new Vec(box.left() + INDENT, y + 2.4 + Type.SMALL.lineHeight()),
                Anchor.START,
                Type.SMALL,
                Svg.cut(second(mark), width, Type.SMALL));
    }

    private static String first(Mark mark) {
        Finding finding = mark.finding();
        if (mark.outcome() == Outcome.NOT_ASSESSED) {
            long count = mark.findings().stream().map(Finding::rule).distinct().count();
            return "Not assessed: " + count + (count == 1 ? " rule" : " rules") + " on "
                    + Roof.shortName(finding.planeName());
        }
        String measured = finding.measured()
                .map(m -> ": " + text(m)
                        + finding.limit()
                                .map(l -> ", " + finding.comparison() + " " + text(l))
                                .orElse(""))
                .orElse("");
        return finding.title() + measured;
    }

    private static String second(Mark mark) {
        Finding finding = mark.finding();
        if (mark.outcome() == Outcome.NOT_ASSESSED) {
            return mark.findings().stream().map(Finding::title).distinct().collect(Collectors.joining(", "));
        }
        String where = finding.gridPlace().isEmpty() ? "" : " · " + finding.gridPlace();
        String plane = Roof.shortName(finding.planeName());
        return mark.outcome() == Outcome.CONCEDED
                ? "conceded · " + shortId(finding) + " · " + plane + where
                : finding.severity().label() + " · " + shortId(finding) + " · " + plane + where;
    }

    /** What tells findings of one rule apart; the rule stands above it. */
    private static String shortId(Finding finding) {
        return finding.id().startsWith(finding.rule() + "-")
                ? finding.id().substring(finding.rule().length() + 1)
                : finding.id();
    }

    private static String text(Measure measure) {
        int decimals = measure.unit().equals("mm") ? 1 : 3;
        String number = Figures.fixed(measure.value(), decimals).replaceAll("\\.?0+$", "");
        return switch (measure.unit()) {
            case "1" -> number;
            case "deg" -> number + "°";
            case "m2" -> number + " m²";
            default -> number + " " + measure.unit();
        };
    }
}

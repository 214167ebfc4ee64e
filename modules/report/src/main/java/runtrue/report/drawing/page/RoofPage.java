package runtrue.report.drawing.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import runtrue.report.drawing.place.Board;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.plan.Canvas;
import runtrue.report.drawing.plan.Plan;
import runtrue.report.drawing.plan.Roof;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;
import runtrue.result.CheckResult;
import runtrue.result.FileInfo;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/** One roof on one page. */
public final class RoofPage {
    private static final int MOST_PLANES = 8;

    private final CheckResult result;
    private final Roof roof;
    private final String name;
    private final String title;
    private final Fit fit;

    /**
     * A page with a drawing.
     *
     * @param name of the drawing, plain: things in it that need a name of their own begin with it
     * @param title for people
     */
    public RoofPage(CheckResult result, Roof roof, String name, String title) {
        this.result = result;
        this.roof = roof;
        this.name = name;
        this.title = title;
        fit = Fit.of(roof);
    }

    public double width() {
        return fit.paper().width();
    }

    public double height() {
        return fit.paper().height();
    }

    /** The part of the page that the plan takes. */
    public Box planFrame() {
        return fit.paper().plan();
    }

    /** Where a place of the world lies on the page. */
    public Vec place(Point point) {
        return fit.view().at(point);
    }

    /** Draws all of it. */
    public void draw(Svg svg) {
        Paper paper = fit.paper();
        svg.shape(
                Path.ring(List.of(
                        new Vec(0, 0),
                        new Vec(paper.width(), 0),
                        new Vec(paper.width(), paper.height()),
                        new Vec(0, paper.height()))),
                Ink.WHITE,
                Pen.of(Ink.WHITE, 0));
        Fit.North north = Fit.north(roof.planes(), fit.view());
        Canvas canvas = new Canvas(svg, fit.view(), new Board(paper.plan()), name);
        svg.group("plan");
        Plan.draw(canvas, roof, result.gridLines());
        svg.end();
        svg.group("about");
        new Strip(svg, paper.strip()).draw(fit, north, paper.name(), notes(canvas));
        side(new Side(svg, paper.side()), canvas, north);
        svg.end();
    }

    private List<String> notes(Canvas canvas) {
        List<String> notes = new ArrayList<>();
        notes.add("Not a design: an engineer's design, local codes and a safety plan for work on the roof come first.");
        notes.add("Lengths in metres along the slope, not to be scaled off the plan; sheets in the length to order.");
        if (!canvas.leftOut().isEmpty()) {
            notes.add(String.join(" ", canvas.leftOut()));
        }
        return notes;
    }

    private void side(Side side, Canvas canvas, Fit.North north) {
        head(side);
        List<List<String>> facts = facts();
        side.pairs(side.bottom("About this drawing", facts.size() * Side.pairHeight() + 0.5), facts);
        Legend legend = Legend.of(canvas);
        legend.draw(side.svg(), side.bottom("Signs", legend.height() + 2));
        Box picture =
                side.top("Seen from the south-east", Math.min(58, side.left().height() * 0.24));
        new Axonometry(north.bearing()).draw(side.svg(), roof.planes(), picture.grown(-1.5));
        planes(side);
        Box rest = side.top(
                "Findings, numbered as in non-conformances.xlsx", side.left().height() - 7);
        new Findings(side.svg()).draw(rest, roof.marks());
    }

    private void head(Side side) {
        Box head = side.top(19);
        Svg svg = side.svg();
        double width = head.width();
        Type type = Type.TITLE.width(title) <= width ? Type.TITLE : Type.SUBTITLE;
        svg.text(new Vec(head.left(), head.top() + 4.4), Anchor.START, type, Svg.cut(title, width, type));
        svg.text(
                new Vec(head.left(), head.top() + 9.6),
                Anchor.START,
                Type.NAME,
                Svg.cut("Drop " + result.drop(), width, Type.NAME));
        svg.text(
                new Vec(head.left(), head.top() + 14.4),
                Anchor.START,
                Type.NORMAL,
                Svg.cut(outcome(), width, Type.NORMAL));
    }

    private String outcome() {
        int failing = count(Outcome.DOES_NOT_CONFORM);
        int open = count(Outcome.NOT_ASSESSED);
        int conceded = count(Outcome.CONCEDED);
        return "Not conforming: " + failing + " · not assessed: " + open
                + (conceded > 0 ? " · conceded: " + conceded : "");
    }

    private int count(Outcome outcome) {
        return roof.marks().stream()
                .filter(m -> m.outcome() == outcome)
                .mapToInt(m -> m.findings().size())
                .sum();
    }

    private void planes(Side side) {
        int most = fit.paper().equals(Paper.A4) ? 5 : MOST_PLANES;
        int shown = Math.min(most, roof.planes().size());
        boolean more = shown < roof.planes().size();
        Box box = side.top("Planes", (shown + 1 + (more ? 1 : 0)) * Side.pairHeight() + 2);
        double y = box.top() + Type.SMALL.size();
        row(side.svg(), box, y, Type.QUIET, List.of("", "pitch", "area m²", "sheets", "run m"));
        for (PlaneResult plane : roof.planes().subList(0, shown)) {
            y += Side.pairHeight();
            row(side.svg(), box, y, Type.SMALL, cells(plane));
        }
        if (more) {
            svgMore(
                    side.svg(),
                    new Vec(box.left(), y + Side.pairHeight()),
                    roof.planes().size() - shown);
        }
    }

    private static void svgMore(Svg svg, Vec at, int count) {
        svg.text(at, Anchor.START, Type.QUIET, "and " + count + " smaller: see Planes in quantities.xlsx");
    }

    private static List<String> cells(PlaneResult plane) {
        return List.of(
                Roof.shortName(plane.name()),
                Roof.pitch(plane),
                Figures.fixed(plane.areaSquareMetres(), 1),
                Integer.toString(plane.sheets().size()),
                plane.sheets().isEmpty() ? "" : Figures.metres(plane.longestRunMetres()));
    }

    private static void row(Svg svg, Box box, double y, Type type, List<String> cells) {
        svg.text(new Vec(box.left(), y), Anchor.START, type, Svg.cut(cells.get(0), box.width() - 50, type));
        double[] ends = {38, 25, 14, 0};
        for (int i = 0; i < ends.length; i++) {
            svg.text(new Vec(box.right() - ends[i], y), Anchor.END, type, cells.get(i + 1));
        }
    }

    private List<List<String>> facts() {
        List<List<String>> facts = new ArrayList<>();
        String files = result.files().stream().map(FileInfo::name).collect(Collectors.joining(", "));
        facts.add(List.of(result.files().size() == 1 ? "Model file" : "Model files", files));
        facts.add(List.of(
                "Rule set", result.ruleSet().name() + " " + result.ruleSet().version()));
        facts.add(List.of("Roof system", result.roofSystem().title()));
        facts.add(List.of("Its values", result.roofSystem().source()));
        facts.add(List.of("Run", result.runStamp()));
        facts.add(List.of("Program", "Runtrue " + result.toolVersion()));
        return facts;
    }
}

package runtrue.report.roofs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import runtrue.report.scene.PlanView;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Line;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Overlay;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.TextHeight;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/** A picture of each building's roof from above with numbers, and its planes by number beside it. */
public final class RoofPlanSheet {
    public static final String NAME = "Roof plan";

    private static final List<Integer> WIDTHS = List.of(7, 36, 10, 12, 15, 15, 78);
    private static final int PICTURE_COLUMN = WIDTHS.size() - 1;

    /** In points. */
    private static final float ROW_HEIGHT = 15;

    private static final float HEAD_HEIGHT = 32;
    private static final float SECTION_HEIGHT = 24;
    private static final double PICTURE_HEIGHT = 300;
    private static final double PICTURE_WIDTH = 400;

    /** Rows that a picture is as high as. */
    private static final int PICTURE_ROWS = 21;

    /** Pictures of one workbook; buildings beyond are listed without. */
    private static final int MOST_PICTURES = 24;

    private final CheckResult result;
    private final Map<String, List<PlaneResult>> buildings;
    private final Map<String, Long> failed;
    private final Map<String, Long> open;
    private final Map<String, Link> planes = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Overlay.Image> images = new ArrayList<>();
    private final List<Overlay.Linked> links = new ArrayList<>();
    private final List<Integer> breaks = new ArrayList<>();

    private RoofPlanSheet(CheckResult result) {
        this.result = result;
        this.failed = counts(result, Outcome.DOES_NOT_CONFORM);
        this.open = counts(result, Outcome.NOT_ASSESSED);
        this.buildings = result.planes().stream()
                .collect(Collectors.groupingBy(PlaneResult::building, LinkedHashMap::new, Collectors.toList()));
    }

    /** The row of each plane on the sheet, by the plane's id. */
    public static Map<String, Link> rows(CheckResult result) {
        Map<String, Link> rows = new HashMap<>();
        int row = 1;
        for (List<PlaneResult> planes : new RoofPlanSheet(result).buildings.values()) {
            for (int i = 0; i < planes.size(); i++) {
                rows.put(planes.get(i).id(), new Link(NAME, row + 2 + i));
            }
            row += 1 + Math.max(planes.size() + 1, PICTURE_ROWS);
        }
        return rows;
    }

    /**
     * The sheet.
     *
     * @param planes where a plane's name leads, by its id
     * @param findings where the number of what does not conform on a plane leads, by the plane's id
     */
    public static Page page(CheckResult result, Map<String, Link> planes, Map<String, Link> findings) {
        RoofPlanSheet sheet = new RoofPlanSheet(result);
        sheet.planes.putAll(planes);
        sheet.lines.add(sheet.heads());
        sheet.buildings.forEach((name, of) -> sheet.building(name, of, findings));
        if (sheet.buildings.isEmpty()) {
            sheet.lines.add(new Line(List.of(Cell.of("No roof plane was found.", Look.TEXT)), 0, true));
        }
        return new Page(
                NAME,
                WIDTHS,
                1,
                0,
                false,
                WIDTHS.size(),
                true,
                sheet.lines.size(),
                sheet.lines,
                new Overlay(sheet.links, sheet.images, Optional.empty(), sheet.breaks));
    }

    private Line heads() {
        return new Line(
                List.of(
                        Cell.of("No.", Look.NUMBER_HEADER),
                        Cell.of("Plane", Look.HEADER),
                        Cell.of("Pitch (°)", Look.NUMBER_HEADER),
                        Cell.of("Area (m²)", Look.NUMBER_HEADER),
                        Cell.of("✗ Does not conform", Look.NUMBER_HEADER),
                        Cell.of("? Not assessed", Look.NUMBER_HEADER),
                        Cell.of("From above, model +Y up; rings: where something does not conform", Look.HEADER)),
                HEAD_HEIGHT,
                false);
    }

    private void building(String name, List<PlaneResult> of, Map<String, Link> findings) {
        int start = lines.size();
        if (start > 1) {
            breaks.add(start);
        }
        section(name.isEmpty() ? "Roof" : name);
        for (int i = 0; i < of.size(); i++) {
            plane(i + 1, of.get(i), findings);
        }
        while (lines.size() < start + 1 + Math.max(of.size() + 1, PICTURE_ROWS)) {
            lines.add(new Line(List.of(Cell.of("", Look.NOTE)), ROW_HEIGHT, false));
        }
        boolean seen = of.stream().anyMatch(p -> !p.outline().isEmpty());
        if (seen && images.size() < MOST_PICTURES) {
            images.add(new Overlay.Image(
                    () -> PlanView.png(of, places(of)),
                    new Overlay.Spot(PICTURE_COLUMN, start + 1, PICTURE_WIDTH, PICTURE_HEIGHT),
                    "Roof from above, planes by number as in the rows beside it"));
        }
    }

    private void section(String name) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < WIDTHS.size(); i++) {
            cells.add(Cell.of(i == 0 ? name : "", Look.SECTION));
        }
        lines.add(new Line(cells, SECTION_HEIGHT, false));
    }

    private void plane(int number, PlaneResult plane, Map<String, Link> findings) {
        int row = lines.size();
        Optional<Link> to = Optional.ofNullable(planes.get(plane.id()));
        Optional<Link> finding = Optional.ofNullable(findings.get(plane.id()));
        to.ifPresent(l -> links.add(new Overlay.Linked(row, row, 1, l)));
        finding.ifPresent(l -> links.add(new Overlay.Linked(row, row, 4, l)));
        Cell name = Cell.of(plane.name(), Look.WRAPPED);
        Cell faults = Cell.of(failed.getOrDefault(plane.id(), 0L), Look.COUNT);
        lines.add(new Line(
                List.of(
                        Cell.of(number, Look.COUNT),
                        to.isPresent() ? name.linked() : name,
                        Cell.of(plane.pitchDegrees(), Look.DEGREES),
                        Cell.of(plane.areaSquareMetres(), Look.SQUARE_METRES),
                        finding.isPresent() ? faults.linked() : faults,
                        Cell.of(open.getOrDefault(plane.id(), 0L), Look.COUNT)),
                Math.max(ROW_HEIGHT, TextHeight.points(plane.name(), WIDTHS.get(1) - 1)),
                false));
    }

    private static Map<String, Long> counts(CheckResult result, Outcome outcome) {
        return result.findings(outcome).stream().collect(Collectors.groupingBy(Finding::plane, Collectors.counting()));
    }

    private List<Point> places(List<PlaneResult> of) {
        var ids = of.stream().map(PlaneResult::id).collect(Collectors.toSet());
        return result.findings(Outcome.DOES_NOT_CONFORM).stream()
                .filter(f -> ids.contains(f.plane()))
                .map(Finding::place)
                .flatMap(Optional::stream)
                .toList();
    }
}

package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Type;
import runtrue.result.PlaneResult.Sheet;

/** Sheets as strips, and once for each run of equal neighbours how many and how long to order. */
final class StripLayer {
    /** Strips narrower than this on paper run together into grey. */
    private static final double NARROWEST = 0.7;

    private static final int MOST_STRIPS = 8000;

    /** Sheets whose lengths differ less are ordered as one length. */
    private static final double SAME = 0.005;

    private static final double[] SHARES = {0.5, 0.25, 0.75, 0.12, 0.88, 0.37, 0.62};

    private final Canvas canvas;
    private int drawn;

    StripLayer(Canvas canvas) {
        this.canvas = canvas;
    }

    void draw(List<Patch> patches) {
        canvas.svg().group("sheets", Pen.of(Ink.PALE, 0.13));
        patches.forEach(this::strips);
        canvas.svg().end();
    }

    private void strips(Patch patch) {
        List<Sheet> sheets = patch.plane().sheets();
        if (sheets.isEmpty()) {
            return;
        }
        if (patch.across().length() * widest(sheets) < NARROWEST || drawn + sheets.size() > MOST_STRIPS) {
            canvas.leftOut(
                    "Sheets too many or too narrow for this scale are not drawn: see Sheet list in quantities.xlsx.");
            return;
        }
        drawn += sheets.size();
        canvas.used(Sign.SHEETS);
        sheets.forEach(s -> strip(patch, s));
    }

    private static double widest(List<Sheet> sheets) {
        return sheets.stream().mapToDouble(s -> s.u().lengthMetres()).max().orElse(0);
    }

    /** Its far side, and its upper end where the plane goes on beyond it. */
    private void strip(Patch patch, Sheet sheet) {
        Path path = new Path();
        double u = sheet.u().toMetres();
        for (double[] v : patch.alongFall(u - 0.001)) {
            double from = Math.max(v[0], sheet.v().fromMetres() - SAME);
            double to = Math.min(v[1], sheet.v().toMetres() + SAME);
            if (to > from) {
                path.segment(patch.at(u, from), patch.at(u, to));
            }
        }
        double end = sheet.v().toMetres();
        double middle = (sheet.u().fromMetres() + u) / 2;
        if (patch.contains(patch.at(middle, end + 0.02))) {
            path.segment(patch.at(sheet.u().fromMetres(), end), patch.at(u, end));
        }
        canvas.svg().path("sheet", "", path);
    }

    /** The widest runs first. */
    void label(List<Patch> patches) {
        record Labelled(Patch patch, List<Sheet> run) {}
        List<Labelled> runs = new ArrayList<>();
        patches.forEach(p -> runs(p.plane().sheets()).forEach(r -> runs.add(new Labelled(p, r))));
        runs.sort(Comparator.comparingInt((Labelled r) -> r.run.size()).reversed());
        for (Labelled labelled : runs) {
            if (!label(labelled.patch, labelled.run)) {
                canvas.leftOut("Lengths of some sheets find no room: see Sheet list in quantities.xlsx.");
            }
        }
    }

    /** Neighbours of one length between the same levels. */
    static List<List<Sheet>> runs(List<Sheet> sheets) {
        List<List<Sheet>> runs = new ArrayList<>();
        List<Sheet> left = new ArrayList<>(
                sheets.stream().sorted(Comparator.comparingInt(Sheet::number)).toList());
        while (!left.isEmpty()) {
            List<Sheet> run = new ArrayList<>(List.of(left.remove(0)));
            for (int i = 0; i < left.size(); ) {
                Sheet last = run.get(run.size() - 1);
                Sheet next = left.get(i);
                if (next.number() > last.number() + 1) {
                    break;
                }
                if (next.number() == last.number() + 1 && alike(last, next)) {
                    run.add(left.remove(i));
                } else {
                    i++;
                }
            }
            runs.add(run);
        }
        return runs;
    }

    private static boolean alike(Sheet a, Sheet b) {
        return Math.abs(a.orderMetres() - b.orderMetres()) < SAME
                && Math.abs(a.v().fromMetres() - b.v().fromMetres()) < SAME
                && Math.abs(a.v().toMetres() - b.v().toMetres()) < SAME;
    }

    private boolean label(Patch patch, List<Sheet> run) {
        Sheet middle = run.get(run.size() / 2);
        String length = Figures.metres(middle.orderMetres());
        String text = run.size() == 1 ? length : run.size() + " × " + length;
        return (run.size() > 2 && bar(patch, run, text)) || upright(patch, run, text);
    }

    /** Across the run, with a line from its first to its last sheet. */
    private boolean bar(Patch patch, List<Sheet> run, String text) {
        double from = run.get(0).u().fromMetres();
        double to = run.get(run.size() - 1).u().toMetres();
        double width = (to - from) * patch.across().length();
        if (Type.SMALL.width(text) + 3 > width) {
            return false;
        }
        for (double share : new double[] {0.16, 0.84, 0.3, 0.7, 0.5}) {
            Sheet middle = run.get(run.size() / 2);
            double v = middle.v().fromMetres() + share * middle.v().lengthMetres();
            Vec inset = patch.across().unit().times(Math.min(0.9, width / 8));
            Vec start = patch.at(from, v).plus(inset);
            Vec end = patch.at(to, v).minus(inset);
            Tilted line = Tilted.around(start, end, 1);
            if (!canvas.board().freeForLine(line)) {
                continue;
            }
            List<Tilted> places = new ArrayList<>();
            for (double at : SHARES) {
                places.add(new Tilted(
                        patch.at(from + at * (to - from), v)
                                .plus(patch.up().unit().times(2)),
                        patch.across().unit(),
                        0,
                        0));
            }
            if (canvas.label(places, Type.SMALL, text)) {
                canvas.board().takeForLine(line);
                BarLine.draw(canvas.svg(), start, end, Pen.of(Ink.GREY, 0.18));
                return true;
            }
        }
        return false;
    }

    /** Along the middle sheet. */
    private boolean upright(Patch patch, List<Sheet> run, String text) {
        Sheet middle = run.get(run.size() / 2);
        double width = (run.get(run.size() - 1).u().toMetres() - run.get(0).u().fromMetres())
                * patch.across().length();
        double length = middle.v().lengthMetres() * patch.up().length();
        if (width < Type.SMALL.size() || Type.SMALL.width(text) + 1 > length) {
            return false;
        }
        double u = (middle.u().fromMetres() + middle.u().toMetres()) / 2;
        List<Tilted> places = new ArrayList<>();
        for (double share : new double[] {0.5, 0.35, 0.65, 0.22, 0.78}) {
            double v = middle.v().fromMetres() + share * middle.v().lengthMetres();
            places.add(new Tilted(patch.at(u, v), patch.up().unit(), 0, 0));
        }
        places.removeIf(p -> !patch.contains(p.centre()));
        return canvas.label(places, Type.SMALL, text);
    }
}

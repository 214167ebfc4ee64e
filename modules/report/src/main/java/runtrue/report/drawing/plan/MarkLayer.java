package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;
import runtrue.result.Outcome;

/** Findings where they are: a diamond, a square or a ring for the outcome, with the number that the list explains. */
public final class MarkLayer {
    private static final double SIZE = 5.6;
    private static final int MOST = 80;
    private static final double[] DISTANCES = {0, 6, 9, 13, 18, 25};

    private final Canvas canvas;
    private final Map<String, Patch> patches = new HashMap<>();
    private final List<Placed> placed = new ArrayList<>();

    private record Placed(Mark mark, Vec place, Vec centre) {}

    MarkLayer(Canvas canvas, List<Patch> patches) {
        this.canvas = canvas;
        patches.forEach(p -> this.patches.put(p.plane().id(), p));
    }

    /** Takes the room before anything else does. */
    void place(List<Mark> marks) {
        int left = 0;
        for (Mark mark : marks) {
            Optional<Vec> place = mark.place()
                    .map(canvas.view()::at)
                    .or(() -> Optional.ofNullable(patches.get(mark.finding().plane()))
                            .flatMap(p -> Clearings.of(p).stream().findFirst()));
            if (placed.size() >= MOST || place.isEmpty() || !place(mark, place.get())) {
                left++;
            }
        }
        if (left > 0) {
            canvas.leftOut(left + (left == 1 ? " finding is" : " findings are")
                    + " not marked for want of room: see non-conformances.xlsx.");
        }
    }

    private boolean place(Mark mark, Vec place) {
        List<Tilted> rooms = new ArrayList<>();
        for (double distance : DISTANCES) {
            for (int i = 0; i < (distance == 0 ? 1 : 12); i++) {
                Vec way = new Vec(Math.cos(Math.PI * i / 6 - 0.6), Math.sin(Math.PI * i / 6 - 0.6));
                rooms.add(Tilted.level(place.plus(way.times(distance)), SIZE, SIZE));
            }
        }
        Optional<Tilted> room = canvas.board().first(rooms);
        room.ifPresent(r -> placed.add(new Placed(mark, place, r.centre())));
        return room.isPresent();
    }

    void draw() {
        canvas.svg().group("findings");
        for (Placed p : placed) {
            if (p.centre.minus(p.place).length() > 0.1) {
                canvas.svg().line(Path.line(p.place, p.centre), Pen.of(colour(p.mark.outcome()), 0.2));
                canvas.svg().circle(p.place, 0.5, colour(p.mark.outcome()), Pen.of(Ink.WHITE, 0));
            }
        }
        for (Placed p : placed) {
            canvas.svg().group("finding", p.mark.finding().id());
            draw(canvas.svg(), p.centre, p.mark.outcome(), p.mark.sign());
            canvas.svg().end();
            canvas.used(sign(p.mark.outcome()));
        }
        canvas.svg().end();
    }

    private static Sign sign(Outcome outcome) {
        return switch (outcome) {
            case DOES_NOT_CONFORM -> Sign.NON_CONFORMING;
            case CONCEDED -> Sign.CONCEDED;
            default -> Sign.NOT_ASSESSED;
        };
    }

    private static String colour(Outcome outcome) {
        return outcome == Outcome.DOES_NOT_CONFORM ? Ink.ACCENT : Ink.BLACK;
    }

    /** Draws one sign, {@value #SIZE} mm high. */
    public static void draw(Svg svg, Vec centre, Outcome outcome, String text) {
        double half = SIZE / 2;
        Pen pen = Pen.of(Ink.WHITE, 0.3);
        String letters = Ink.WHITE;
        if (outcome == Outcome.DOES_NOT_CONFORM) {
            List<Vec> diamond = List.of(new Vec(0, -half), new Vec(half, 0), new Vec(0, half), new Vec(-half, 0));
            svg.shape(Path.ring(moved(diamond, centre)), Ink.ACCENT, pen);
        } else if (outcome == Outcome.CONCEDED) {
            double s = 0.75 * half;
            List<Vec> square = List.of(new Vec(-s, -s), new Vec(s, -s), new Vec(s, s), new Vec(-s, s));
            svg.shape(Path.ring(moved(square, centre)), Ink.BLACK, pen);
        } else {
            svg.circle(centre, 0.75 * half, Ink.WHITE, Pen.of(Ink.BLACK, 0.35));
            letters = Ink.BLACK;
        }
        Type type = new Type(text.length() > 2 ? 1.7 : 2.3, true, letters);
        svg.text(centre.plus(new Vec(0, type.drop())), Anchor.MIDDLE, type, text);
    }

    private static List<Vec> moved(List<Vec> ring, Vec by) {
        return ring.stream().map(p -> p.plus(by)).toList();
    }
}

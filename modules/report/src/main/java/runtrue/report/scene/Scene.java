package runtrue.report.scene;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.report.scene.Canvas.Spot;
import runtrue.result.CheckResult;
import runtrue.result.Direction;
import runtrue.result.ElementRef;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * What a view's camera sees of the roof: planes by their slope, the one in question tinted and its supports dashed, the
 * place ringed. Without any text, so that no fonts are needed. Far planes are drawn first; where planes reach through each
 * other that order is not exact.
 */
public final class Scene {
    private static final int INK = 0x263238;
    private static final int FAULT = 0xC24E00;
    private static final int QUIET = 0x78909C;
    private static final int HALO = 0xFFFFFF;
    private static final double RING = 22;

    private final CheckResult result;
    private final View view;
    private final Canvas canvas;

    private Scene(CheckResult result, View view, Canvas canvas) {
        this.result = result;
        this.view = view;
        this.canvas = canvas;
    }

    /** What lies wholly outside the canvas is left out, what reaches over its edge the canvas clips. */
    public static void draw(CheckResult result, View view, Canvas canvas) {
        new Scene(result, view, canvas).draw();
    }

    private void draw() {
        result.planes().stream()
                .filter(plane -> !plane.outline().isEmpty())
                .sorted(Comparator.comparingDouble(this::depth).reversed().thenComparing(PlaneResult::id))
                .forEach(this::plane);
        Set<String> named = view.selected().stream().map(ElementRef::globalId).collect(Collectors.toSet());
        result.planes().stream()
                .filter(plane -> plane.id().equals(view.plane()))
                .flatMap(plane -> plane.supports().stream())
                .flatMap(line -> line.pieces().stream())
                .forEach(piece -> support(piece, named.contains(piece.element().globalId())));
        view.place().map(this::spot).ifPresent(this::mark);
    }

    private void plane(PlaneResult plane) {
        List<List<Spot>> rings = Stream.concat(
                        Stream.of(plane.outline()),
                        plane.penetrations().stream().map(PlaneResult.Penetration::outline))
                .map(ring -> ring.stream().map(this::spot).toList())
                .toList();
        if (isSeen(rings.get(0))) {
            canvas.area(rings, shade(plane.frame().normal(), plane.id().equals(view.plane())), INK, 1.4);
        }
    }

    private static boolean isSeen(List<Spot> ring) {
        var x = ring.stream().mapToDouble(Spot::x).summaryStatistics();
        var y = ring.stream().mapToDouble(Spot::y).summaryStatistics();
        return x.getMax() > 0 && x.getMin() < Canvas.WIDTH && y.getMax() > 0 && y.getMin() < Canvas.HEIGHT;
    }

    private void support(PlaneResult.Piece piece, boolean named) {
        canvas.line(spot(piece.from()), spot(piece.to()), named ? FAULT : QUIET, named ? 4 : 1.2, !named);
    }

    private void mark(Spot at) {
        canvas.circle(at, RING, HALO, 9);
        canvas.circle(at, RING, FAULT, 4.5);
        canvas.dot(at, 3.5, FAULT);
    }

    private Spot spot(Point point) {
        Point seen = view.camera().seen(point);
        double scale = Canvas.HEIGHT / view.camera().height();
        return new Spot(Canvas.WIDTH / 2 + seen.xMetres() * scale, Canvas.HEIGHT / 2 - seen.yMetres() * scale);
    }

    private double depth(PlaneResult plane) {
        return plane.outline().stream()
                .mapToDouble(point -> view.camera().seen(point).zMetres())
                .average()
                .orElse(0);
    }

    private int shade(Direction normal, boolean inQuestion) {
        int grey = grey(normal, view.camera().right());
        return inQuestion ? rgb(grey - 30, grey - 6, Math.min(255, grey + 11)) : rgb(grey, grey, grey);
    }

    /** The grey of a plane that is not in question. */
    static int shade(Direction normal, Direction right) {
        int grey = grey(normal, right);
        return rgb(grey, grey, grey);
    }

    /** Lit from the right of the picture; only the direction of fall counts, or a low roof would be of one grey. */
    private static int grey(Direction normal, Direction right) {
        double plan = Math.hypot(normal.x(), normal.y());
        double towards = plan < 1e-3 ? 0.3 : (normal.x() * right.x() + normal.y() * right.y()) / plan;
        return (int) Math.round(222 + 22 * towards);
    }

    private static int rgb(int red, int green, int blue) {
        return red << 16 | green << 8 | blue;
    }
}

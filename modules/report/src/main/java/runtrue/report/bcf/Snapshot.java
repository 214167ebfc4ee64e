package runtrue.report.bcf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import runtrue.result.CheckResult;
import runtrue.result.Direction;
import runtrue.result.ElementRef;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * The picture that a viewpoint's camera takes of the roof: planes by their slope, the one in question tinted and its
 * supports dashed, the place ringed. Without any text, so that no fonts are needed. Far planes are drawn first; where
 * planes reach through each other that order is not exact.
 */
final class Snapshot {
    private static final int HEIGHT = 720;
    private static final int WIDTH = (int) Math.round(HEIGHT * Camera.ASPECT);
    private static final Color INK = new Color(0x26, 0x32, 0x38);
    private static final Color FAULT = new Color(0xC2, 0x4E, 0x00);
    private static final Color QUIET = new Color(0x78, 0x90, 0x9C);
    private static final double RING = 22;

    private final CheckResult result;
    private final View view;

    private Snapshot(CheckResult result, View view) {
        this.result = result;
        this.view = view;
    }

    /** PNG bytes of one view. */
    static byte[] of(CheckResult result, View view) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try {
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, WIDTH, HEIGHT);
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            new Snapshot(result, view).draw(pen);
        } finally {
            pen.dispose();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private void draw(Graphics2D pen) {
        result.planes().stream()
                .sorted(Comparator.comparingDouble(this::depth).reversed().thenComparing(PlaneResult::id))
                .forEach(plane -> plane(pen, plane));
        Set<String> named = view.selected().stream().map(ElementRef::globalId).collect(Collectors.toSet());
        result.planes().stream()
                .filter(plane -> plane.id().equals(view.plane()))
                .flatMap(plane -> plane.supports().stream())
                .flatMap(line -> line.pieces().stream())
                .forEach(piece ->
                        support(pen, piece, named.contains(piece.element().globalId())));
        view.place().ifPresent(place -> ring(pen, place));
    }

    private void plane(Graphics2D pen, PlaneResult plane) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        add(path, plane.outline());
        plane.penetrations().forEach(hole -> add(path, hole.outline()));
        pen.setColor(shade(plane.frame().normal(), plane.id().equals(view.plane())));
        pen.fill(path);
        pen.setColor(INK);
        pen.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        pen.draw(path);
    }

    private void support(Graphics2D pen, PlaneResult.Piece piece, boolean named) {
        pen.setColor(named ? FAULT : QUIET);
        pen.setStroke(
                named
                        ? new BasicStroke(4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                        : new BasicStroke(
                                1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {8f, 5f}, 0f));
        double[] from = pixel(piece.from());
        double[] to = pixel(piece.to());
        pen.draw(new Line2D.Double(from[0], from[1], to[0], to[1]));
    }

    private void ring(Graphics2D pen, Point place) {
        double[] at = pixel(place);
        for (boolean halo : new boolean[] {true, false}) {
            pen.setColor(halo ? Color.WHITE : FAULT);
            pen.setStroke(new BasicStroke(halo ? 9f : 4.5f));
            pen.draw(new Ellipse2D.Double(at[0] - RING, at[1] - RING, 2 * RING, 2 * RING));
        }
        pen.fill(new Ellipse2D.Double(at[0] - 3.5, at[1] - 3.5, 7, 7));
    }

    private void add(Path2D path, List<Point> ring) {
        boolean first = true;
        for (Point point : ring) {
            double[] at = pixel(point);
            if (first) {
                path.moveTo(at[0], at[1]);
            } else {
                path.lineTo(at[0], at[1]);
            }
            first = false;
        }
        path.closePath();
    }

    private double[] pixel(Point point) {
        Point seen = view.camera().seen(point);
        double scale = HEIGHT / view.camera().height();
        return new double[] {WIDTH / 2.0 + seen.xMetres() * scale, HEIGHT / 2.0 - seen.yMetres() * scale};
    }

    private double depth(PlaneResult plane) {
        return plane.outline().stream()
                .mapToDouble(point -> view.camera().seen(point).zMetres())
                .average()
                .orElse(0);
    }

    /** Lit from the upper left of the picture; only the direction of fall counts, or a low roof would be of one grey. */
    private Color shade(Direction normal, boolean inQuestion) {
        Direction right = view.camera().right();
        double plan = Math.hypot(normal.x(), normal.y());
        double towards = plan < 1e-3 ? 0.3 : -(normal.x() * right.x() + normal.y() * right.y()) / plan;
        int grey = (int) Math.round(222 + 22 * towards);
        return inQuestion ? new Color(grey - 30, grey - 6, Math.min(255, grey + 11)) : new Color(grey, grey, grey);
    }
}

package runtrue.report.pdf;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import runtrue.report.scene.Canvas;

/** A scene drawn on a page, as lines and areas. */
final class PdfCanvas implements Canvas {
    /** How far the handles of a Bezier curve reach so that four of them make a circle: 4 (sqrt 2 - 1) / 3. */
    private static final double HANDLE = 4 * (Math.sqrt(2) - 1) / 3;

    private final PDPageContentStream page;
    private final double left;
    private final double top;
    private final double scale;

    /**
     * Prepares.
     *
     * @param left of the picture, points
     * @param top of the picture, points from the page's foot
     * @param width of the picture, points
     */
    PdfCanvas(PDPageContentStream page, double left, double top, double width) {
        this.page = page;
        this.left = left;
        this.top = top;
        this.scale = width / WIDTH;
    }

    /** One step of drawing. */
    @FunctionalInterface
    private interface Step {
        void draw() throws IOException;
    }

    private static void drawn(Step step) {
        try {
            step.draw();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void area(List<List<Spot>> rings, int fill, int ink, double width) {
        drawn(() -> {
            stroke(ink, width, false);
            page.setNonStrokingColor(new Color(fill));
            for (List<Spot> ring : rings) {
                for (int i = 0; i < ring.size(); i++) {
                    if (i == 0) {
                        page.moveTo(x(ring.get(i)), y(ring.get(i)));
                    } else {
                        page.lineTo(x(ring.get(i)), y(ring.get(i)));
                    }
                }
                page.closePath();
            }
            page.fillAndStrokeEvenOdd();
        });
    }

    @Override
    public void line(Spot from, Spot to, int ink, double width, boolean dashed) {
        drawn(() -> {
            stroke(ink, width, dashed);
            page.moveTo(x(from), y(from));
            page.lineTo(x(to), y(to));
            page.stroke();
        });
    }

    @Override
    public void circle(Spot middle, double radius, int ink, double width) {
        drawn(() -> {
            stroke(ink, width, false);
            around(middle, radius);
            page.stroke();
        });
    }

    @Override
    public void dot(Spot middle, double radius, int ink) {
        drawn(() -> {
            page.setNonStrokingColor(new Color(ink));
            around(middle, radius);
            page.fill();
        });
    }

    private void around(Spot middle, double radius) throws IOException {
        float r = (float) (radius * scale);
        float h = (float) (radius * scale * HANDLE);
        float x = x(middle);
        float y = y(middle);
        page.moveTo(x + r, y);
        page.curveTo(x + r, y + h, x + h, y + r, x, y + r);
        page.curveTo(x - h, y + r, x - r, y + h, x - r, y);
        page.curveTo(x - r, y - h, x - h, y - r, x, y - r);
        page.curveTo(x + h, y - r, x + r, y - h, x + r, y);
        page.closePath();
    }

    private void stroke(int ink, double width, boolean dashed) throws IOException {
        page.setStrokingColor(new Color(ink));
        page.setLineWidth((float) (width * scale));
        page.setLineDashPattern(dashed ? new float[] {(float) (8 * scale), (float) (5 * scale)} : new float[0], 0);
    }

    private float x(Spot spot) {
        return (float) (left + spot.x() * scale);
    }

    private float y(Spot spot) {
        return (float) (top - spot.y() * scale);
    }
}

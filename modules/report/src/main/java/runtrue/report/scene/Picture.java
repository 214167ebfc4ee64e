package runtrue.report.scene;

import com.pngencoder.PngEncoder;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import java.util.function.Consumer;
import runtrue.result.CheckResult;

/** A scene as PNG. */
public final class Picture implements Canvas {
    private static final float[] DASHES = {8f, 5f};

    /** Pixels for a unit of the canvas: a viewer shows the picture beside its list, no larger than this. */
    private static final double SCALE = 2.0 / 3;

    /** Of deflate's levels: flat pictures become hardly smaller by higher ones, which take twice the time. */
    private static final int QUICK = 2;

    private final Graphics2D pen;

    private Picture(Graphics2D pen) {
        this.pen = pen;
    }

    /** PNG bytes of one view, 640 by 480 pixels. */
    public static byte[] of(CheckResult result, View view) {
        return of(canvas -> Scene.draw(result, view, canvas), SCALE);
    }

    /** PNG bytes of anything, {@code scale} pixels for a unit of the canvas. */
    static byte[] of(Consumer<Canvas> drawing, double scale) {
        int width = (int) Math.round(WIDTH * scale);
        int height = (int) Math.round(HEIGHT * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try {
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, width, height);
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            pen.scale(scale, scale);
            drawing.accept(new Picture(pen));
        } finally {
            pen.dispose();
        }
        Shades.join(((DataBufferInt) image.getRaster().getDataBuffer()).getData());
        return new PngEncoder()
                .withBufferedImage(image)
                .withTryIndexedEncoding(true)
                .withCompressionLevel(QUICK)
                // One part of the output is one task already, and segments would make the bytes hang on their number.
                .withMultiThreadedCompressionEnabled(false)
                .toBytes();
    }

    @Override
    public void area(List<List<Spot>> rings, int fill, int ink, double width) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (List<Spot> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Spot at = ring.get(i);
                if (i == 0) {
                    path.moveTo(at.x(), at.y());
                } else {
                    path.lineTo(at.x(), at.y());
                }
            }
            path.closePath();
        }
        pen.setColor(new Color(fill));
        pen.fill(path);
        stroke(ink, width, false);
        pen.draw(path);
    }

    @Override
    public void line(Spot from, Spot to, int ink, double width, boolean dashed) {
        stroke(ink, width, dashed);
        pen.draw(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
    }

    @Override
    public void circle(Spot middle, double radius, int ink, double width) {
        stroke(ink, width, false);
        pen.draw(around(middle, radius));
    }

    @Override
    public void dot(Spot middle, double radius, int ink) {
        pen.setColor(new Color(ink));
        pen.fill(around(middle, radius));
    }

    private static Ellipse2D around(Spot middle, double radius) {
        return new Ellipse2D.Double(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
    }

    private void stroke(int ink, double width, boolean dashed) {
        pen.setColor(new Color(ink));
        pen.setStroke(
                dashed
                        ? new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, DASHES, 0f)
                        : new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    }
}

package runtrue.report.scene;

import java.util.List;

/** What a scene is drawn on: {@link #WIDTH} by {@link #HEIGHT} units, y downwards. Colours are 0xRRGGBB. */
public interface Canvas {
    double HEIGHT = 720;
    double WIDTH = HEIGHT * Camera.ASPECT;

    /** A place on it. */
    record Spot(double x, double y) {}

    /** Fills rings, of which those within another one are holes, and draws around them. */
    void area(List<List<Spot>> rings, int fill, int ink, double width);

    void line(Spot from, Spot to, int ink, double width, boolean dashed);

    void circle(Spot middle, double radius, int ink, double width);

    void dot(Spot middle, double radius, int ink);
}

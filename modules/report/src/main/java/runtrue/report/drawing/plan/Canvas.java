package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.report.drawing.place.Board;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.View;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;

/** A plan being drawn: where it goes, what room is taken, what it has used of signs, and what it had to leave out. */
public final class Canvas {
    /** Labels of one drawing, beyond which nobody reads them and viewers become slow. */
    private static final int MOST_LABELS = 900;

    private final Svg svg;
    private final View view;
    private final Board board;
    private final String name;
    private final Set<Sign> signs = new TreeSet<>();
    private final Set<String> edgeKinds = new TreeSet<>();
    private final Set<String> leftOut = new LinkedHashSet<>();
    private final List<Label> labels = new ArrayList<>();

    private record Label(Tilted place, double degrees, Type type, String text) {}

    /**
     * An empty plan.
     *
     * @param name of the drawing, by which its hatches are kept apart from those of others
     */
    public Canvas(Svg svg, View view, Board board, String name) {
        this.svg = svg;
        this.view = view;
        this.board = board;
        this.name = name;
    }

    Svg svg() {
        return svg;
    }

    View view() {
        return view;
    }

    Board board() {
        return board;
    }

    String name() {
        return name;
    }

    /** Notes that a sign appears, for the legend. */
    void used(Sign sign) {
        signs.add(sign);
    }

    void usedEdge(String kind) {
        edgeKinds.add(kind);
    }

    /** Notes what the drawing does not show, for its reader. */
    void leftOut(String sentence) {
        leftOut.add(sentence);
    }

    /** What to fill spans with that are too long. */
    public String hatch() {
        return "url(#" + name + "-hatch)";
    }

    public Set<Sign> signs() {
        return signs;
    }

    public Set<String> edgeKinds() {
        return edgeKinds;
    }

    public Set<String> leftOut() {
        return leftOut;
    }

    /** The room that one line of text needs. */
    static Tilted room(Tilted at, Type type, String text) {
        return new Tilted(at.centre(), at.along(), type.width(text) + 0.8, type.size() * 1.15);
    }

    /** Writes one line of text at the first place that is free; each place gives centre and direction. */
    boolean label(List<Tilted> places, Type type, String text) {
        if (labels.size() >= MOST_LABELS) {
            leftOut("Labels beyond the first " + MOST_LABELS + " are left out.");
            return false;
        }
        Optional<Tilted> place =
                board.first(places.stream().map(p -> room(p, type, text)).toList());
        place.ifPresent(p -> write(p, type, text));
        return place.isPresent();
    }

    /** Writes one line of text at a place that is taken for it already. */
    void write(Tilted place, Type type, String text) {
        labels.add(new Label(place, place.along().readable().degrees(), type, text));
    }

    /** Puts the labels onto what is drawn so far, each on a light ground. */
    void flushLabels() {
        svg.group("labels");
        for (Label label : labels) {
            svg.shape(Path.ring(label.place.corners()), Ink.WHITE, Pen.of(Ink.WHITE, 0));
        }
        for (Label label : labels) {
            Tilted place = label.place;
            svg.text(
                    place.centre().plus(place.along().readable().turned().times(label.type.drop())),
                    Anchor.MIDDLE,
                    label.degrees,
                    label.type,
                    label.text);
        }
        svg.end();
        labels.clear();
    }
}

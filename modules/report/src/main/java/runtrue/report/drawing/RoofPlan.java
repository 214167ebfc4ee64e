package runtrue.report.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import runtrue.report.drawing.page.RoofPage;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.plan.Roof;
import runtrue.report.drawing.svg.Svg;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/** One drawing, ready to be written. The same result gives the same bytes on any machine. */
public final class RoofPlan {
    private final CheckResult result;
    private final Roof roof;
    private final int number;
    private final int of;
    private byte @Nullable [] drawn;

    RoofPlan(CheckResult result, Roof roof, int number, int of) {
        this.result = result;
        this.roof = roof;
        this.number = number;
        this.of = of;
    }

    /** A plain name, alone among the drawings of a drop: {@code roof-plan-1}. */
    public String name() {
        return "roof-plan-" + number;
    }

    /** For people. */
    public String title() {
        return roof.name(result) + (of == 1 ? "" : ", roof " + number + " of " + of);
    }

    /** Ids of the planes that it shows, largest first. */
    public List<String> planes() {
        return roof.planes().stream().map(PlaneResult::id).toList();
    }

    /** The part of the page that the plan itself takes, millimetres from the page's upper left corner. */
    public Box frame() {
        return page().planFrame();
    }

    /** From places of the world to the page, millimetres from its upper left corner. */
    public Function<Point, Vec> places() {
        return page()::place;
    }

    /** The page as an element for a page of HTML: a drawing has its looks with it and needs no style of that page. */
    public String element() throws IOException {
        String page = new String(drawn(), StandardCharsets.UTF_8);
        return page.substring(page.indexOf("<svg"));
    }

    /** Writes a page of SVG 1.1, UTF-8, and leaves the stream open. */
    public void write(OutputStream out) throws IOException {
        out.write(drawn());
    }

    /** Drawn once, however many files show it: finding room for labels takes longer than all else. */
    private synchronized byte[] drawn() throws IOException {
        if (drawn == null) {
            RoofPage page = page();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            Svg.write(bytes, page.width(), page.height(), title(), page::draw);
            drawn = bytes.toByteArray();
        }
        return drawn;
    }

    private RoofPage page() {
        return new RoofPage(result, roof, name(), title());
    }
}

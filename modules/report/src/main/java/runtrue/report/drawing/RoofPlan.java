package runtrue.report.drawing;

import java.io.IOException;
import java.io.OutputStream;
import runtrue.report.drawing.page.RoofPage;
import runtrue.report.drawing.plan.Roof;
import runtrue.report.drawing.svg.Svg;
import runtrue.result.CheckResult;

/** One drawing, ready to be written. The same result gives the same bytes on any machine. */
public final class RoofPlan {
    private final CheckResult result;
    private final Roof roof;
    private final int number;
    private final int of;

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

    /** Writes a page of SVG 1.1, UTF-8, and leaves the stream open. */
    public void write(OutputStream out) throws IOException {
        RoofPage page = new RoofPage(result, roof, name(), title());
        Svg.write(out, page.width(), page.height(), title(), page::draw);
    }
}

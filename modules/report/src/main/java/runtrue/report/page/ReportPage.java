package runtrue.report.page;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import runtrue.report.drawing.RoofPlan;
import runtrue.report.drawing.RoofPlans;
import runtrue.report.page.data.PageData;
import runtrue.result.CheckResult;

/**
 * A page of HTML that shows a result: it carries all that it needs, opens from disk and asks no network for anything. The
 * same result gives the same bytes on any machine.
 */
public final class ReportPage {
    private ReportPage() {}

    /** Writes the page, UTF-8, and leaves the stream open. */
    public static void write(CheckResult result, OutputStream out) throws IOException {
        write(result, RoofPlans.of(result), out);
    }

    /**
     * The same with drawings that are written elsewhere too.
     *
     * @param plans all of the result
     */
    public static void write(CheckResult result, List<RoofPlan> plans, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        try {
            for (Template.Part part : Template.page()) {
                writer.write(part.text());
                switch (part.slot()) {
                    case POLICY -> writer.write(Policy.of(Front.style(), Front.boot()));
                    case STYLE -> writer.write(Front.style());
                    case PLANS -> plans(plans, writer);
                    case DATA -> PageData.write(result, plans, writer);
                    case MODULES -> modules(writer);
                    case LICENCE -> writer.write(Front.licence());
                    case BOOT -> writer.write(Front.boot());
                    case END -> {}
                }
            }
            writer.flush();
        } catch (UncheckedIOException e) {
            throw new IOException("The page could not be written: " + e.getMessage(), e);
        }
    }

    private static void plans(List<RoofPlan> plans, Writer out) throws IOException {
        for (RoofPlan plan : plans) {
            out.write("<div class=\"drawing\" data-drawing=\"" + plan.name() + "\" hidden>");
            out.write(plan.element());
            out.write("</div>\n");
        }
    }

    private static void modules(Writer out) throws IOException {
        for (Front.Module module : Front.modules()) {
            out.write("<script type=\"text/plain\" data-module=\"" + module.name() + "\">\n");
            out.write(module.text());
            out.write("</script>\n");
        }
    }
}

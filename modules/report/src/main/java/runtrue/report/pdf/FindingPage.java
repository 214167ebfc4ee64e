package runtrue.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import runtrue.report.cover.Columns;
import runtrue.report.scene.Canvas;
import runtrue.report.scene.Scene;
import runtrue.report.scene.Views;
import runtrue.result.CheckResult;
import runtrue.result.Counts.Outcomes;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** Fills the page of one finding. */
final class FindingPage {
    private static final double BODY = 9.5;
    private static final double SMALL = 8.5;
    private static final double PICTURE_WIDTH = 330;
    private static final int NAMED = 8;

    private final CheckResult result;
    private final Optional<Views> views;

    FindingPage(CheckResult result, Optional<Views> views) {
        this.result = result;
        this.views = views;
    }

    /** {@code major}, or that somebody accepts it. */
    static String grade(Finding finding) {
        return finding.outcome() == Outcome.CONCEDED
                ? "conceded"
                : finding.severity().label();
    }

    /** {@code 2.7 m, at most 1.7 m}. */
    static String figures(Finding finding) {
        String measured = finding.measured().map(m -> m.words(finding.limit())).orElse("");
        String limit = finding.limit()
                .map(l -> (finding.comparison() + " " + l.words(finding.measured())).strip())
                .orElse("");
        return measured.isEmpty() || limit.isEmpty() ? measured + limit : measured + ", " + limit;
    }

    static String counts(CheckResult result) {
        Outcomes total = result.counts().total();
        return total.doesNotConform() + " do not conform, " + total.notAssessed() + " not assessed, " + total.conceded()
                + " conceded, " + total.conforms() + " conform.";
    }

    void fill(Leaf leaf, Finding finding, int number) throws IOException {
        leaf.put("Non-conformance " + number, Leaf.LEFT, leaf.y() - 9, SMALL, true, Leaf.QUIET);
        leaf.putRight(finding.id(), Leaf.RIGHT, leaf.y() - 9, SMALL, Leaf.QUIET);
        leaf.skip(14);
        leaf.text(finding.title(), 17, true, Leaf.ACCENT);
        leaf.text(finding.subject(), 11, false, Leaf.INK);
        leaf.text(grade(finding), BODY, true, Leaf.INK);
        leaf.skip(8);
        picture(leaf, finding);
        section(leaf, "What is found", finding.message());
        section(leaf, "Measured, limit", figures(finding));
        section(leaf, "Source of the limit", finding.limitSource());
        section(leaf, "What would cure it", finding.cure());
        section(leaf, "Conceded", finding.outcome() == Outcome.CONCEDED ? finding.reason() : "");
        section(leaf, "Where", Columns.where(finding).replace("\n", ", "));
        section(leaf, "Elements", elements(finding.elements()));
        section(leaf, "Files", String.join(", ", finding.files()));
        answer(leaf);
    }

    private void picture(Leaf leaf, Finding finding) throws IOException {
        if (views.isEmpty()) {
            return;
        }
        double height = PICTURE_WIDTH / Canvas.WIDTH * Canvas.HEIGHT;
        PDPageContentStream content = leaf.content();
        double foot = leaf.y() - height;
        content.saveGraphicsState();
        content.addRect((float) Leaf.LEFT, (float) foot, (float) PICTURE_WIDTH, (float) height);
        content.clip();
        Scene.draw(result, views.get().of(finding), new PdfCanvas(content, Leaf.LEFT, leaf.y(), PICTURE_WIDTH));
        content.restoreGraphicsState();
        content.setStrokingColor(Leaf.RULE);
        content.setLineWidth(0.7f);
        content.setLineDashPattern(new float[0], 0);
        content.addRect((float) Leaf.LEFT, (float) foot, (float) PICTURE_WIDTH, (float) height);
        content.stroke();
        legend(leaf, foot);
        leaf.skip(height + 8);
    }

    private static void legend(Leaf leaf, double foot) throws IOException {
        double x = Leaf.LEFT + PICTURE_WIDTH + 12;
        double y = foot + 44;
        for (String line : List.of(
                "Ring: the place.",
                "Tinted: the plane in question.",
                "Dashed: its supports;",
                "thick: those in question.")) {
            leaf.put(line, x, y, 7.5, false, Leaf.QUIET);
            y -= 10.5;
        }
    }

    private static void section(Leaf leaf, String head, String text) throws IOException {
        if (text.isEmpty() || !leaf.hasRoom(2 * BODY)) {
            return;
        }
        double label = 104;
        double start = leaf.y();
        leaf.put(head, Leaf.LEFT, start - BODY * 1.32, BODY, true, Leaf.ACCENT);
        leaf.column(text, Leaf.LEFT + label, Leaf.WIDTH - label, BODY, false, Leaf.INK);
        leaf.skip(3);
    }

    private static String elements(List<ElementRef> elements) {
        String named = Columns.namesAndIds(elements.subList(0, Math.min(NAMED, elements.size())));
        return elements.size() > NAMED
                ? named + "\nand " + (elements.size() - NAMED) + " more; result.json has all"
                : named;
    }

    /** Room for whoever answers, at the foot of the page, where the finding has left any. */
    private static void answer(Leaf leaf) throws IOException {
        double top = Math.min(150, leaf.y() - 12);
        double foot = 66;
        if (top - 40 < foot) {
            return;
        }
        leaf.rule(Leaf.LEFT, Leaf.RIGHT, top);
        leaf.put("Answer", Leaf.LEFT, top - 13, BODY, true, Leaf.ACCENT);
        double third = Leaf.WIDTH / 3;
        List<String> heads = List.of("Name and firm", "Date", "Signature");
        for (int i = 0; i < heads.size(); i++) {
            double x = Leaf.LEFT + i * third;
            leaf.rule(x, x + third - 12, foot + 10);
            leaf.put(heads.get(i), x, foot, 7.5, false, Leaf.QUIET);
        }
    }
}

package runtrue.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Gaps;
import runtrue.report.scene.Views;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/**
 * Writes the non-conformances of a drop as PDF: an index, a page for each with the place marked and room for an answer,
 * and a list of what was not assessed. Texts can be selected; each page has a bookmark. The same result gives the same
 * bytes on the same Java.
 */
public final class FindingsPdf {
    private static final double SMALL = 8.5;
    private static final List<Double> INDEX = List.of(26.0, 62.0, 250.0, 128.0, 36.0);

    private final CheckResult result;
    private final PDDocument document;
    private final Face face;
    private final List<Leaf> leaves = new ArrayList<>();
    private final PDDocumentOutline outline = new PDDocumentOutline();

    private FindingsPdf(CheckResult result, PDDocument document, Face face) {
        this.result = result;
        this.document = document;
        this.face = face;
    }

    /** Writes the document and leaves the stream open. */
    public static void write(CheckResult result, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument();
                Face face = Face.in(document)) {
            String program = "Runtrue " + result.toolVersion();
            String title = "Non-conformances: " + result.drop();
            Archive.describe(document, title, program, result.runStamp(), result.drop() + " " + result.runStamp());
            new FindingsPdf(result, document, face).write(program);
            document.save(out, CompressParameters.DEFAULT_COMPRESSION);
        }
    }

    private void write(String program) throws IOException {
        document.getDocumentCatalog().setDocumentOutline(outline);
        List<Finding> findings = Stream.of(Outcome.DOES_NOT_CONFORM, Outcome.CONCEDED)
                .flatMap(outcome -> result.findings(outcome).stream())
                .toList();
        List<IndexLine> index = index(findings);
        int first = leaves.size();
        Optional<Views> views = Views.of(result);
        FindingPage pages = new FindingPage(result, views);
        for (int i = 0; i < findings.size(); i++) {
            Leaf leaf = leaf();
            pages.fill(leaf, findings.get(i), i + 1);
            bookmark(
                    (i + 1) + "  " + findings.get(i).title() + ": "
                            + findings.get(i).subject(),
                    leaf);
        }
        notAssessed();
        for (IndexLine line : index) {
            line.linkTo(leaves.get(first + line.number() - 1).page(), this);
        }
        for (int i = 0; i < leaves.size(); i++) {
            footer(leaves.get(i), program, i + 1);
        }
        for (Leaf leaf : leaves) {
            leaf.close();
        }
    }

    private Leaf leaf() throws IOException {
        Leaf leaf = new Leaf(document, face);
        leaves.add(leaf);
        return leaf;
    }

    private void bookmark(String title, Leaf leaf) {
        PDPageFitDestination destination = new PDPageFitDestination();
        destination.setPage(leaf.page());
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(destination);
        outline.addLast(item);
    }

    /** A line of the index: where it stands, and which finding it leads to. */
    private record IndexLine(int leaf, int number, double top, double foot) {
        void linkTo(PDPage target, FindingsPdf to) throws IOException {
            PDPageFitDestination destination = new PDPageFitDestination();
            destination.setPage(target);
            PDActionGoTo action = new PDActionGoTo();
            action.setDestination(destination);
            PDBorderStyleDictionary none = new PDBorderStyleDictionary();
            none.setWidth(0);
            PDAnnotationLink link = new PDAnnotationLink();
            link.setAction(action);
            link.setBorderStyle(none);
            link.setPrinted(true);
            link.setRectangle(
                    new PDRectangle((float) Leaf.LEFT, (float) foot, (float) Leaf.WIDTH, (float) (top - foot)));
            to.leaves.get(leaf).page().getAnnotations().add(link);
        }
    }

    private List<IndexLine> index(List<Finding> findings) throws IOException {
        Leaf leaf = leaf();
        bookmark("Index", leaf);
        leaf.text("Non-conformances", 22, true, Leaf.ACCENT);
        leaf.skip(6);
        leaf.text(result.drop(), 13, true, Leaf.INK);
        leaf.text(
                "Checked " + result.runStamp() + " by rule set "
                        + result.ruleSet().name() + " " + result.ruleSet().version() + ", roof system "
                        + result.roofSystem().name(),
                SMALL,
                false,
                Leaf.QUIET);
        leaf.text(
                result.files().stream().map(f -> f.name()).collect(Collectors.joining(", ")), SMALL, false, Leaf.QUIET);
        leaf.skip(8);
        leaf.text(FindingPage.counts(result), 10, false, Leaf.INK);
        leaf.skip(10);
        List<IndexLine> lines = new ArrayList<>();
        heads(leaf);
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            if (!leaf.hasRoom(40)) {
                leaf = leaf();
                heads(leaf);
            }
            double top = leaf.y();
            leaf.row(
                    List.of(
                            Integer.toString(i + 1),
                            FindingPage.grade(finding),
                            finding.title() + ": " + finding.subject(),
                            FindingPage.figures(finding),
                            finding.storey()),
                    INDEX,
                    SMALL,
                    false,
                    Leaf.INK);
            leaf.rule();
            lines.add(new IndexLine(leaves.size() - 1, i + 1, top, leaf.y()));
        }
        if (findings.isEmpty()) {
            leaf.text("Nothing that was assessed fails to conform.", 10, false, Leaf.INK);
        }
        cautions(leaf);
        return lines;
    }

    private static void heads(Leaf leaf) throws IOException {
        leaf.row(List.of("No.", "Severity", "Finding", "Measured, limit", "Storey"), INDEX, SMALL, true, Leaf.ACCENT);
        leaf.rule();
    }

    private void cautions(Leaf start) throws IOException {
        Leaf leaf = start;
        leaf.skip(12);
        for (String caution : result.cautions()) {
            if (!leaf.hasRoom(leaf.height(caution, Leaf.WIDTH, SMALL))) {
                leaf = leaf();
            }
            leaf.text(caution, SMALL, false, Leaf.QUIET);
            leaf.skip(2);
        }
    }

    /** Causes, each once, with what they concern: they are open questions and no non-conformances. */
    private void notAssessed() throws IOException {
        List<List<Finding>> causes = Gaps.of(result);
        if (causes.isEmpty()) {
            return;
        }
        Leaf leaf = leaf();
        bookmark("Not assessed", leaf);
        leaf.text("Not assessed", 18, true, Leaf.ACCENT);
        leaf.text("Each of these is open: it neither conforms nor fails.", 10, false, Leaf.QUIET);
        for (List<Finding> alike : causes) {
            Finding first = alike.get(0);
            String concerned = alike.stream()
                    .map(Columns::where)
                    .map(w -> w.lines().findFirst().orElse(""))
                    .filter(w -> !w.isEmpty())
                    .distinct()
                    .limit(12)
                    .collect(Collectors.joining("; "));
            if (!leaf.hasRoom(30 + leaf.height(first.reason() + concerned, Leaf.WIDTH, SMALL))) {
                leaf = leaf();
            }
            leaf.skip(8);
            leaf.text(first.title() + " (" + alike.size() + ")", 10, true, Leaf.INK);
            leaf.text(first.reason(), SMALL, false, Leaf.INK);
            leaf.text(concerned, SMALL, false, Leaf.QUIET);
        }
    }

    private void footer(Leaf leaf, String program, int number) throws IOException {
        leaf.rule(Leaf.LEFT, Leaf.RIGHT, 44);
        leaf.put(
                program + "  ·  " + result.drop() + "  ·  " + result.runStamp(), Leaf.LEFT, 32, 7.5, false, Leaf.QUIET);
        leaf.putRight("Page " + number + " of " + leaves.size(), Leaf.RIGHT, 32, 7.5, Leaf.QUIET);
    }
}

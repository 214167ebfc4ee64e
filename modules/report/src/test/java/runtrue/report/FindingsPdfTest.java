package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import runtrue.report.pdf.FindingsPdf;
import runtrue.result.CheckResult;

class FindingsPdfTest {
    private static byte[] bytes(CheckResult result) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        FindingsPdf.write(result, out);
        return out.toByteArray();
    }

    private static String text(byte[] pdf, int from, int to) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(from);
            stripper.setEndPage(to);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    /** Two that do not conform, one conceded, one that was not assessed. */
    @Test
    void eachFindingHasAPageAfterTheIndexAndABookmark() throws IOException {
        byte[] pdf = bytes(MillLane.result());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(5);
            assertThat(StreamSupport.stream(
                                    document.getDocumentCatalog()
                                            .getDocumentOutline()
                                            .children()
                                            .spliterator(),
                                    false)
                            .map(item -> item.getTitle()))
                    .hasSize(5)
                    .startsWith("Index", "1  Pitch is enough to drain: pitch of the plane")
                    .endsWith("Not assessed");
            assertThat(document.getPage(0).getAnnotations()).hasSize(3);
        }
        assertThat(text(pdf, 3, 3))
                .contains("1900 mm, at most 1800 mm", "2Pm5X1aVr5cwTq8dYzN3aD", "Move line 2 down", "Signature");
        assertThat(text(pdf, 4, 4)).contains("conceded", "A. Miller");
        assertThat(text(pdf, 5, 5)).contains("it neither conforms nor fails");
    }

    /** ISO 19005-2: metadata that say so, an output intent, every typeface embedded. */
    @Test
    void itIsMadeToBeKept() throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(MillLane.result()))) {
            assertThat(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains("<pdfaid:part>2</pdfaid:part>", "<pdfaid:conformance>B</pdfaid:conformance>");
            assertThat(document.getDocumentCatalog().getOutputIntents()).hasSize(1);
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void charactersThatTheTypefaceLacksAreMarkedAndNothingIsLost() throws IOException {
        byte[] pdf = bytes(InventedGable.drop(1, "Halle \u5c4b\u6839 / s\u00fcd\u0007"));
        assertThat(pdf).isNotEmpty();
        assertThat(text(pdf, 2, 2)).contains("Internal span", "3000 mm, at most 2000 mm");
    }

    @Test
    void theSameResultGivesTheSameBytes() throws IOException {
        assertThat(bytes(InventedGable.drop(1))).isEqualTo(bytes(InventedGable.drop(1)));
    }
}

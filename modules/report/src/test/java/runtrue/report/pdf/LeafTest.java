package runtrue.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class LeafTest {
    @Test
    void a_text_that_is_longer_than_the_page_is_cut_above_its_foot_and_says_so() throws IOException {
        try (PDDocument document = new PDDocument();
                Face face = Face.in(document)) {
            try (Leaf leaf = new Leaf(document, face)) {
                leaf.text("word ".repeat(5_000), 10, false, Leaf.INK);
                assertThat(leaf.y()).isBetween(40.0, 80.0);
                assertThat(leaf.hasRoom(10)).isFalse();
            }
            assertThat(new PDFTextStripper().getText(document)).contains("cut here");
        }
    }

    @Test
    void a_word_wider_than_its_column_is_broken_and_nothing_of_it_lost() throws IOException {
        try (PDDocument document = new PDDocument();
                Face face = Face.in(document)) {
            assertThat(String.join("", face.lines("0Qm5X1aVr5cwTq8dYzN3aB".repeat(9), 8, 60)))
                    .isEqualTo("0Qm5X1aVr5cwTq8dYzN3aB".repeat(9));
        }
    }
}

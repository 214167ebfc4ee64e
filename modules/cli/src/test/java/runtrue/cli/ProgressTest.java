package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {
    @Test
    void the_line_names_the_stage_and_how_much_of_it_is_done() {
        ProgressState state = new ProgressState("hall");
        state.stage(Stage.READING_SHAPES, 200);
        state.advance(30);
        state.advance(20);

        assertThat(state.line()).isEqualTo("hall: reading shapes 25 %");
    }

    @Test
    void no_percentage_is_made_up_for_an_unknown_total() {
        ProgressState state = new ProgressState("hall");
        state.stage(Stage.LAYING_OUT, 0);
        state.advance(3);

        assertThat(state.line()).isEqualTo("hall: laying out");
    }

    @Test
    void the_bar_grows_over_the_stages() {
        ProgressState state = new ProgressState("hall");
        state.stage(Stage.READING_SHAPES, 4);
        state.advance(2);
        assertThat(state.bar()).isEqualTo("[########------------] hall: reading shapes 50 %");

        state.stage(Stage.WRITING, 1);
        state.advance(7);
        assertThat(state.bar()).isEqualTo("[####################] hall: writing 100 %");
    }

    @Test
    void a_long_name_leaves_the_line_short() {
        ProgressState state = new ProgressState("x".repeat(200));

        assertThat(state.bar()).hasSizeLessThan(80);
    }

    @Test
    void the_bar_is_wiped_at_the_end() {
        StringWriter text = new StringWriter();
        ProgressDisplay display = new ProgressDisplay("hall", ProgressDisplay.Style.BAR, new PrintWriter(text));
        display.show();
        display.close();

        assertThat(text.toString()).startsWith("\r[").endsWith(" \r").doesNotContain("\n");
    }
}

package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.apache.logging.log4j.LogManager;
import org.junit.jupiter.api.Test;

class LoggingTest {
    @Test
    void what_the_spreadsheet_library_logs_is_not_printed() {
        PrintStream before = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            LogManager.getLogger("org.apache.poi").fatal("seen by nobody");
        } finally {
            System.setErr(before);
        }
        assertThat(printed.toString(StandardCharsets.UTF_8)).isEmpty();
    }
}

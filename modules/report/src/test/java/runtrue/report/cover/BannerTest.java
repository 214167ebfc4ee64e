package runtrue.report.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runtrue.report.sheet.Look;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;
import runtrue.result.Counts;
import runtrue.result.FileInfo;
import runtrue.result.RoofSystemInfo;
import runtrue.result.RuleSetInfo;

class BannerTest {
    private static final FileInfo READ = file(0.001);
    private static final FileInfo UNREAD = file(0);

    private static FileInfo file(double lengthUnit) {
        return new FileInfo("roof.ifc", 1, "", "IFC4", "", "", lengthUnit, "", 1, 1, 0, 0, List.of());
    }

    private static CheckResult result(FileInfo... files) {
        return new CheckResult(
                CheckResult.FORMAT,
                "1",
                "2026-01-01T00:00:00Z",
                "drop",
                List.of(files),
                new RuleSetInfo("rules", "1", "", "", List.of()),
                new RoofSystemInfo("system", "", "", "", List.of(), List.of()),
                List.of(),
                List.of(),
                new Counts(new Counts.Outcomes(5, 0, 0, 0), List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new BillResult(
                        new BillResult.BuildUp("", "", "", ""),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    @Test
    void says_that_all_conforms_only_when_every_file_was_read() {
        assertThat(Banner.of(result(READ)).look()).isEqualTo(Look.ALL_CONFORM);
        assertThat(Banner.of(result(READ, UNREAD)).look()).isEqualTo(Look.SOME_NOT_ASSESSED);
        assertThat(Banner.of(result(READ, UNREAD)).text()).contains("1 file was not read");
    }
}

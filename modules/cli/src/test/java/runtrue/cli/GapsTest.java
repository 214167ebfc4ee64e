package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.result.CheckResult;
import runtrue.result.Outcome;
import runtrue.result.json.ResultJson;

/** The sheet of what was not assessed: every gap once, nothing lost. */
class GapsTest {
    @Test
    void what_lacks_the_same_thing_is_one_row_and_the_rows_count_them_all(@TempDir Path output) throws IOException {
        Path drop = Path.of(System.getProperty("runtrue.root", "../.."), "sample-models", "tally-sheds");
        CommandRun.of(options -> ModelCheck.with(options, Instant.EPOCH), "check", drop, "--output", output, "--quiet");
        Path folder = output.resolve("tally-sheds");
        CheckResult result = ResultJson.read(folder.resolve("result.json"));
        int counted = 0;
        Set<String> reasons = new HashSet<>();
        try (InputStream in = Files.newInputStream(folder.resolve("non-conformances.xlsx"));
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            Sheet sheet = workbook.getSheet("Not assessed");
            for (Row row : sheet) {
                if (row.getRowNum() > 0) {
                    counted += (int) row.getCell(0).getNumericCellValue();
                    String rule = row.getCell(3).getStringCellValue();
                    String reason = row.getCell(4).getStringCellValue();
                    assertThat(reasons.add(rule + reason)).as(reason).isTrue();
                }
            }
        }
        assertThat(counted).isEqualTo(result.findings(Outcome.NOT_ASSESSED).size());
        assertThat(reasons).hasSizeLessThan(counted);
    }
}

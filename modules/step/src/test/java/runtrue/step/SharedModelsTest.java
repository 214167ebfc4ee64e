package runtrue.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SharedModelsTest {
    private static final Pattern LINE_WITH_RECORD = Pattern.compile("(?:^|[\r\n])\\s*#(\\d+)\\s*=");

    @Test
    void realModelsHaveAsManyInstancesAsLinesThatBeginWithOne() throws IOException {
        for (Path path : SharedFiles.ifcBelow("models")) {
            compare(path);
        }
    }

    @Test
    void steelHallsHaveAsManyInstancesAsLinesThatBeginWithOne() throws IOException {
        for (Path path : SharedFiles.ifcBelow("halls")) {
            compare(path);
        }
    }

    /** Counts by a pattern over the text, then decodes every record. */
    private static void compare(Path path) throws IOException {
        Set<Integer> expected = new HashSet<>();
        Matcher lines = LINE_WITH_RECORD.matcher(Files.readString(path, StandardCharsets.ISO_8859_1));
        while (lines.find()) {
            expected.add(Integer.valueOf(lines.group(1)));
        }
        try (StepFile file = StepFile.open(path)) {
            Set<Integer> found = new HashSet<>();
            for (String keyword : file.keywords()) {
                for (int id : file.idsOf(keyword)) {
                    found.add(id);
                    assertThat(file.instance(id).keyword()).isEqualTo(keyword);
                }
            }
            assertThat(found).as(path.toString()).isEqualTo(expected).hasSize(file.size());
            assertThat(file.header().schemas()).hasSize(1);
        }
    }
}

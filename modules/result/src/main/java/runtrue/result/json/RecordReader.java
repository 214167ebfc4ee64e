package runtrue.result.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import runtrue.result.CheckResult;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads results by data binding: reading is rare and never part of a check. */
final class RecordReader {
    private RecordReader() {}

    static JsonMapper mapper() {
        return JsonMapper.builder()
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
                .build();
    }

    static CheckResult read(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        try {
            JsonMapper mapper = mapper();
            JsonNode tree = mapper.readTree(bytes);
            String format = tree.path("format").asString("");
            if (!format.equals(CheckResult.FORMAT)) {
                throw new IOException(file + " is not a " + CheckResult.FORMAT + " result"
                        + (format.isEmpty() ? "" : " but " + format) + ": run the check again to write it anew.");
            }
            return mapper.treeToValue(tree, CheckResult.class);
        } catch (JacksonException e) {
            throw new IOException(
                    file + ", line " + e.getLocation().getLineNr() + ": " + e.getOriginalMessage()
                            + ". Run the check again to write the result anew.",
                    e);
        }
    }
}

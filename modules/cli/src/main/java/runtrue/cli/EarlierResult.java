package runtrue.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import runtrue.result.CheckResult;
import runtrue.result.json.ResultJson;

/**
 * What a drop is compared with.
 *
 * @param result absent when there is none, or none that can be read
 * @param note why there is none although one was asked for; empty otherwise
 */
record EarlierResult(Optional<CheckResult> result, String note) {
    private static final String NAME = "result.json";

    /**
     * The drop's own folder in a folder of results goes first.
     *
     * @param given folder of results, folder of one drop's results, or a result file; must be there
     */
    static EarlierResult of(Path given, String drop) {
        if (!Files.exists(given)) {
            throw CheckException.ofOptions(
                    given + ": no such folder or file. --since takes the output of an earlier check.",
                    new IOException(given.toString()));
        }
        Optional<Path> file = Stream.of(given.resolve(drop).resolve(NAME), given.resolve(NAME), given)
                .filter(Files::isRegularFile)
                .findFirst();
        if (file.isEmpty()) {
            return none(given + " holds no result of this drop; nothing is compared.");
        }
        try {
            return new EarlierResult(Optional.of(ResultJson.read(file.get())), "");
        } catch (IOException e) {
            return none("nothing is compared. " + e.getMessage());
        }
    }

    private static EarlierResult none(String note) {
        return new EarlierResult(Optional.empty(), note);
    }
}

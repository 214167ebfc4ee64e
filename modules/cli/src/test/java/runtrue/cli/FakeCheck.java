package runtrue.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import runtrue.drop.Drop;

/** Stands in for the reading and judging of models: answers by the drop's name, and remembers what it was asked. */
final class FakeCheck implements DropCheck.Factory {
    final List<CheckOptions> options = new ArrayList<>();
    final List<Drop> drops = new ArrayList<>();
    private final Map<String, Supplier<CheckedDrop>> answers = new HashMap<>();

    FakeCheck answer(String drop, Supplier<CheckedDrop> answer) {
        answers.put(drop, answer);
        return this;
    }

    FakeCheck fail(String drop, RuntimeException failure) {
        return answer(drop, () -> {
            throw failure;
        });
    }

    @Override
    public DropCheck with(CheckOptions given) {
        options.add(given);
        return (drop, progress) -> {
            drops.add(drop);
            progress.stage(Stage.INDEXING, 1);
            progress.advance(1);
            return answers.getOrDefault(drop.name(), () -> checked(4, 0, 0, 0)).get();
        };
    }

    static CheckedDrop checked(int conforms, int doesNotConform, int notAssessed, int unread) {
        var counts = new CheckedDrop.Counts(conforms, doesNotConform, notAssessed, 0);
        return new CheckedDrop(2, 1234.56, counts, unread, List.of(), List.of(file("result.json", "new")));
    }

    static OutputFile file(String name, String content) {
        return new OutputFile(name, out -> out.write(content.getBytes(StandardCharsets.UTF_8)));
    }
}

package runtrue.rules.concede;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.Quantity;
import runtrue.rules.read.Bundled;
import runtrue.rules.units.Quantities;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads the concessions of a drop. */
final class ConcessionReader {
    private final Problems problems = new Problems();
    private final Map<String, String> lines = new HashMap<>();

    private ConcessionReader() {}

    /** The file's concessions, or an exception with everything that is wrong. */
    static List<Concession> read(YamlFile file) {
        ConcessionReader reader = new ConcessionReader();
        List<Concession> concessions = file.parse(reader.problems).stream()
                .flatMap(top -> reader.concessions(top).stream())
                .toList();
        reader.problems.throwIfAny();
        return concessions;
    }

    private List<Concession> concessions(Mapping top) {
        SchemaCheck.check(top, Bundled.schema("concessions"), problems);
        List<Concession> concessions = new ArrayList<>();
        for (YamlValue item : top.items("concessions")) {
            if (item instanceof Mapping one && one.scalar("finding").isPresent()) {
                concessions.add(concession(one, one.scalar("finding").get()));
            }
        }
        return concessions;
    }

    private Concession concession(Mapping one, Scalar finding) {
        String from = finding.place().file() + ":" + finding.place().line();
        String before = lines.putIfAbsent(finding.text(), from);
        if (before != null) {
            problems.add(finding.place(), "finding " + finding.text() + " is accepted already, at " + before);
        }
        return new Concession(
                finding.text(),
                one.text("by").orElse(""),
                one.text("why").orElse(""),
                one.scalar("until").flatMap(this::day),
                one.scalar("up_to").flatMap(this::quantity),
                from);
    }

    private Optional<LocalDate> day(Scalar scalar) {
        try {
            return Optional.of(LocalDate.parse(scalar.text()));
        } catch (DateTimeParseException e) {
            problems.add(scalar.place(), "\"" + scalar.text() + "\" is no day; write it as 2027-03-31");
            return Optional.empty();
        }
    }

    private Optional<Quantity> quantity(Scalar scalar) {
        try {
            return Optional.of(Quantities.parse(scalar.text()));
        } catch (IllegalArgumentException e) {
            problems.add(scalar.place(), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }
}

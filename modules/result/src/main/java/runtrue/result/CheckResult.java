package runtrue.result;

import java.util.List;
import java.util.Optional;
import runtrue.result.change.Changes;
import runtrue.result.change.Comparing;

/**
 * What one check of one drop found. Coordinates are world metres as the model files state them, not moved; angles are
 * degrees. Every field that carries a unit has it in its name, so that the JSON keys speak for themselves.
 *
 * @param format {@link #FORMAT}
 * @param toolVersion version of the program that wrote it
 * @param runStamp time of the run as ISO 8601 with zone; given from outside, so that the same input gives the same result
 * @param drop name of the drop
 * @param settings in force, with where each came from
 * @param tolerances with the reason for each
 * @param gridLines of all files of the drop
 * @param findings all that does not conform, was not assessed or was conceded, in full
 * @param conforming what conforms, in short
 * @param concessions what became of each
 * @param unread elements that were chosen but whose shape was not read
 * @param unplaced elements that were read but gave no plane of their own, for example because they lie under another layer
 * @param methods how each element of a plane and each support was read
 * @param stated values that the models state, beside the derived ones
 * @param health what is amiss with the models, most important first
 * @param cautions what a reader must know before relying on the result
 * @param changes since an earlier result; absent when there was none to compare with
 */
public record CheckResult(
        String format,
        String toolVersion,
        String runStamp,
        String drop,
        List<FileInfo> files,
        RuleSetInfo ruleSet,
        RoofSystemInfo roofSystem,
        List<Setting> settings,
        List<ToleranceInfo> tolerances,
        Counts counts,
        List<PlaneResult> planes,
        List<EdgeResult> edges,
        List<BodyResult> bodies,
        List<GridLine> gridLines,
        List<Finding> findings,
        List<Conforming> conforming,
        List<ConcessionResult> concessions,
        BillResult bill,
        List<UnreadElement> unread,
        List<UnreadElement> unplaced,
        List<ReadMethod> methods,
        List<StatedValue> stated,
        List<HealthLine> health,
        List<String> cautions,
        Optional<Changes> changes) {
    /** Name and version of the format; the number rises when a reader of the older one would be misled. */
    public static final String FORMAT = "runtrue-result/3";

    public CheckResult {
        files = List.copyOf(files);
        settings = List.copyOf(settings);
        tolerances = List.copyOf(tolerances);
        planes = List.copyOf(planes);
        edges = List.copyOf(edges);
        bodies = List.copyOf(bodies);
        gridLines = List.copyOf(gridLines);
        findings = List.copyOf(findings);
        conforming = List.copyOf(conforming);
        concessions = List.copyOf(concessions);
        unread = List.copyOf(unread);
        unplaced = List.copyOf(unplaced);
        methods = List.copyOf(methods);
        stated = List.copyOf(stated);
        health = List.copyOf(health);
        cautions = List.copyOf(cautions);
    }

    /** The same with what changed since an earlier result. */
    public CheckResult since(CheckResult earlier) {
        return new CheckResult(
                format,
                toolVersion,
                runStamp,
                drop,
                files,
                ruleSet,
                roofSystem,
                settings,
                tolerances,
                counts,
                planes,
                edges,
                bodies,
                gridLines,
                findings,
                conforming,
                concessions,
                bill,
                unread,
                unplaced,
                methods,
                stated,
                health,
                cautions,
                Optional.of(Comparing.of(earlier, this)));
    }

    /** Findings with one outcome, in the order of {@link #findings}. */
    public List<Finding> findings(Outcome outcome) {
        return findings.stream().filter(f -> f.outcome() == outcome).toList();
    }
}

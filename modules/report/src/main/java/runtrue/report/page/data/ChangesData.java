package runtrue.report.page.data;

import runtrue.result.CheckResult;
import runtrue.result.Outcome;
import runtrue.result.change.Changes;

/** What is different from an earlier result; nothing is written where there was none to compare with. */
final class ChangesData {
    private ChangesData() {}

    static void write(ScriptJson json, CheckResult result) {
        result.changes().ifPresent(changes -> json.object("changes", () -> changes(json, changes)));
    }

    private static void changes(ScriptJson json, Changes changes) {
        json.field("since", changes.earlierRunStamp());
        json.field("same", changes.sameFindings());
        json.texts("basis", changes.basis());
        json.objects("findings", changes.findings(), (j, f) -> {
            j.field("kind", f.kind().label());
            j.field("id", f.id());
            j.field("title", f.title());
            j.field("severity", f.severity().label());
            j.field("subject", f.subject());
            j.field("before", f.before().map(Outcome::label).orElse("not judged"));
            j.field("now", f.now().map(Outcome::label).orElse("not judged"));
            j.field("words", f.words());
        });
        json.objects("orders", changes.orders(), (j, o) -> {
            j.field("description", o.description());
            j.field("variant", o.variant());
            j.field("unit", o.unit());
            j.field("before", o.before());
            j.field("now", o.now());
        });
        json.objects("planes", changes.planes(), (j, p) -> {
            j.field("kind", p.kind().label());
            j.field("name", p.name());
            j.objects("figures", p.figures(), (k, f) -> {
                k.field("what", f.what());
                k.field("before", f.before());
                k.field("now", f.now());
                k.field("unit", f.unit());
            });
        });
    }
}

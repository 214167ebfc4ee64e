package runtrue.report.page.data;

import runtrue.result.CheckResult;
import runtrue.result.Counts;
import runtrue.result.FileInfo;

/** What a reader must know first: which drop, when, by which rules, what came out. */
final class HeadData {
    private HeadData() {}

    static void write(ScriptJson json, CheckResult result) {
        json.field("tool", result.toolVersion());
        json.field("run", result.runStamp());
        json.field("drop", result.drop());
        Verdict verdict = Verdict.of(result);
        json.object("verdict", () -> {
            json.field("outcome", verdict.outcome().label());
            json.field("sentence", verdict.sentence());
        });
        json.object("counts", () -> counts(json, result.counts().total()));
        json.object("ruleSet", () -> {
            json.field("name", result.ruleSet().name());
            json.field("version", result.ruleSet().version());
            json.field("file", result.ruleSet().file());
            json.field("sha256", result.ruleSet().sha256());
        });
        json.object("system", () -> {
            json.field("title", result.roofSystem().title());
            json.field("source", result.roofSystem().source());
            json.field("file", result.roofSystem().file());
            json.objects("values", result.roofSystem().values(), (j, value) -> {
                j.field("name", value.name());
                j.field("value", value.measure());
            });
            json.objects("texts", result.roofSystem().texts(), (j, text) -> {
                j.field("name", text.name());
                j.field("text", text.text());
            });
        });
        json.objects("files", result.files(), HeadData::file);
    }

    static void counts(ScriptJson json, Counts.Outcomes counts) {
        json.field("conforms", counts.conforms());
        json.field("does not conform", counts.doesNotConform());
        json.field("not assessed", counts.notAssessed());
        json.field("conceded", counts.conceded());
    }

    private static void file(ScriptJson json, FileInfo file) {
        json.field("name", file.name());
        json.field("opened", file.opened());
        json.field("bytes", file.sizeBytes());
        json.field("sha256", file.sha256());
        json.field("schema", file.schema());
        json.field("program", file.authoringProgram());
        json.field("time", file.timeStamp());
        json.field("roofs", file.roofElements());
        json.field("members", file.memberElements());
        json.field("unread", file.unreadElements());
        json.texts("notes", file.notes());
    }
}

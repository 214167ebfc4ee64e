package runtrue.result.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import runtrue.result.CheckResult;
import runtrue.result.FileInfo;
import runtrue.result.RoofSystemInfo;
import runtrue.result.Setting;

/** What two results rest on, as far as it differs: a change may come from the rules and not from the model. */
final class Basis {
    private final List<String> found = new ArrayList<>();

    private Basis() {}

    static List<String> of(CheckResult before, CheckResult now) {
        Basis basis = new Basis();
        basis.files(before.files(), now.files());
        basis.add(
                "Rule set",
                before.ruleSet().name() + " " + before.ruleSet().version(),
                now.ruleSet().name() + " " + now.ruleSet().version());
        if (isEdited(before, now)) {
            basis.found.add("The rule set's file was edited since, under the same name and version.");
        }
        basis.add("Roof system", before.roofSystem().name(), now.roofSystem().name());
        basis.texts("Roof system, ", system(before.roofSystem()), system(now.roofSystem()));
        basis.texts("Setting ", settings(before.settings()), settings(now.settings()));
        basis.add(
                "Build-up", before.bill().buildUp().name(), now.bill().buildUp().name());
        basis.add("Program", before.toolVersion(), now.toolVersion());
        return basis.found;
    }

    private static boolean isEdited(CheckResult before, CheckResult now) {
        return before.ruleSet().name().equals(now.ruleSet().name())
                && before.ruleSet().version().equals(now.ruleSet().version())
                && !before.ruleSet().sha256().equals(now.ruleSet().sha256());
    }

    private void files(List<FileInfo> before, List<FileInfo> now) {
        Map<String, FileInfo> earlier = new LinkedHashMap<>();
        before.forEach(f -> earlier.put(f.name(), f));
        for (FileInfo file : now) {
            FileInfo old = earlier.remove(file.name());
            if (old == null) {
                found.add("File " + file.name() + " is new.");
            } else if (!old.sha256().equals(file.sha256())) {
                found.add("File " + file.name() + " was issued again.");
            }
        }
        earlier.keySet().forEach(name -> found.add("File " + name + " is gone."));
    }

    private void add(String what, String before, String now) {
        if (!before.equals(now)) {
            found.add(what + ": " + before + ", now " + now + ".");
        }
    }

    private void texts(String what, Map<String, String> before, Map<String, String> now) {
        now.forEach((name, value) -> add(what + name, before.getOrDefault(name, "not stated"), value));
        before.forEach((name, value) -> {
            if (!now.containsKey(name)) {
                add(what + name, value, "not stated");
            }
        });
    }

    private static Map<String, String> settings(List<Setting> settings) {
        return map(settings, Setting::name, Setting::value);
    }

    private static Map<String, String> system(RoofSystemInfo system) {
        Map<String, String> found =
                map(system.values(), v -> v.name(), v -> v.measure().words());
        found.putAll(map(system.texts(), RoofSystemInfo.Text::name, RoofSystemInfo.Text::text));
        return found;
    }

    private static <T> Map<String, String> map(List<T> things, Function<T, String> name, Function<T, String> value) {
        Map<String, String> found = new LinkedHashMap<>();
        things.forEach(thing -> found.put(name.apply(thing), value.apply(thing)));
        return found;
    }
}

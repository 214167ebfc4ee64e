package runtrue.report.quantities;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

/** Names of planes by id, for sheets that refer to them. */
final class PlaneNames {
    private final Map<String, String> byId = new HashMap<>();

    PlaneNames(CheckResult result) {
        for (PlaneResult plane : result.planes()) {
            byId.put(plane.id(), plane.name());
        }
    }

    /** The name, or the id of a plane that is not in the result; empty for none. */
    String of(String id) {
        return byId.getOrDefault(id, id);
    }

    String of(List<String> ids) {
        return String.join("\n", ids.stream().map(this::of).toList());
    }
}

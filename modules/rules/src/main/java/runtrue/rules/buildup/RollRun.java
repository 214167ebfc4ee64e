package runtrue.rules.buildup;

import java.util.Optional;

/** Which way rolls are rolled out on a plane. */
public enum RollRun {
    /** Along the supports, from verge to verge. */
    ACROSS("across"),
    /** Along the fall, from eave to ridge. */
    ALONG("along");

    private final String label;

    RollRun(String label) {
        this.label = label;
    }

    /** As build-ups write it. */
    public String label() {
        return label;
    }

    static Optional<RollRun> find(String label) {
        for (RollRun run : values()) {
            if (run.label.equals(label)) {
                return Optional.of(run);
            }
        }
        return Optional.empty();
    }
}

package runtrue.rules.buildup;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Whether corner, edge and interior zones are told apart. */
public enum Zoning {
    /** Zones do not matter. */
    NONE,
    /** One thing to order for all, the quantities stated zone by zone. */
    TOGETHER,
    /** Another thing to order in each. */
    APART;

    static Optional<Zoning> find(String text) {
        return Arrays.stream(values()).filter(z -> z.label().equals(text)).findFirst();
    }

    /** As build-up files say it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}

package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.units.Quantities;

/** What sheets are ordered by besides their length. */
final class SheetName {
    private SheetName() {}

    /** {@code Kestrel 500, 0.6 mm steel, colour-coated, colour not stated}. */
    static String of(RoofSystem system, DropSettings settings) {
        String thickness = Optional.ofNullable(system.values().get("thickness"))
                .map(Quantities::text)
                .orElse("thickness not stated");
        List<String> parts = new ArrayList<>();
        parts.add(system.title());
        parts.add(thickness + " " + system.texts().getOrDefault("material", "metal"));
        Optional.ofNullable(system.texts().get("finish")).ifPresent(parts::add);
        parts.add(Optional.ofNullable(settings.texts().get("colour")).orElse("colour not stated"));
        return String.join(", ", parts);
    }
}

package runtrue.result.build;

import java.util.List;

/** What a reader must know before relying on any result, whatever it says. */
final class Cautions {
    private Cautions() {}

    static List<String> standing() {
        return List.of(
                "Wind: the zones and fixing densities here are a check of the model against the stated rule set. They do not"
                        + " replace the design of a licensed engineer. Local codes and licensed practice come first.",
                "Work at height: collective protection, access and rescue must be planned before anyone goes on the roof.",
                "Fragile roofs: sheets that are not fully fixed, rooflights and liner sheets do not carry a person. Do not"
                        + " tread on them.",
                "Quantities come from the model, before allowances for waste, laps and site tolerance unless a line says"
                        + " otherwise. Measure on site before sheets are rolled.",
                "What was not read or not assessed is listed and is not counted as conforming.");
    }
}

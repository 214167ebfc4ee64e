package runtrue.rules.judge;

import java.util.Map;
import runtrue.rules.DropSettings;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.SettingsFiles;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.Facts;

/** Facts that a roof system and a drop's settings state; what they leave out is missing with the reason. */
public final class StatedFacts {
    private StatedFacts() {}

    /** The outermost layer of facts of a drop. */
    public static Facts of(FactCatalogue catalogue, RoofSystem system, DropSettings settings) {
        Facts facts = Facts.empty();
        system(facts, catalogue, system);
        settings(facts, catalogue, settings);
        return facts;
    }

    private static void system(Facts facts, FactCatalogue catalogue, RoofSystem system) {
        String evidence = "roof system " + system.name();
        for (Map.Entry<String, FactSpec> entry : catalogue.group("system").entrySet()) {
            String name = entry.getKey();
            Quantity value = system.values().get(name);
            String text = system.texts().get(name);
            if (value != null) {
                facts.know("system." + name, value.si(), evidence);
            } else if (text != null) {
                facts.know("system." + name, text, evidence);
            } else {
                facts.miss("system." + name, "is not stated by " + evidence);
            }
        }
    }

    private static void settings(Facts facts, FactCatalogue catalogue, DropSettings settings) {
        for (String name : catalogue.group("settings").keySet()) {
            String fact = "settings." + name;
            String origin = settings.origins().getOrDefault(name, "settings");
            Quantity value = settings.values().get(name);
            String text = settings.texts().get(name);
            Boolean truth = settings.switches().get(name);
            if (value != null) {
                facts.know(fact, value.si(), origin);
            } else if (text != null) {
                facts.know(fact, text, origin);
            } else if (truth != null) {
                facts.know(fact, truth, origin);
            } else {
                facts.miss(fact, "is not stated; add " + name + " to " + SettingsFiles.NAME);
            }
        }
    }
}

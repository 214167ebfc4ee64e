package runtrue.rules.judge;

import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.roof.Zone;
import runtrue.rules.RoofSystem;
import runtrue.rules.cel.Facts;
import runtrue.rules.wind.PlaneZone;
import runtrue.rules.wind.ZoneUplift;
import runtrue.wind.ClipDemand;

/** Facts of a zone. */
final class ZoneFacts {
    private static final String NO_SUPPORT = "is not known: no support lies in the zone";

    private ZoneFacts() {}

    static Facts of(PlaneZone zone, RoofSystem system, Facts plane) {
        Facts facts = plane.inner()
                .know("zone.kind", zone.zone().kind().label(), "")
                .know("zone.name", zone.name(), "")
                .know("zone.area", zone.zone().area(), "");
        size(facts, zone.zone(), system);
        wind(facts, zone.uplift());
        clips(facts, zone, system);
        return facts;
    }

    private static void size(Facts facts, Zone zone, RoofSystem system) {
        if (zone.width() > 0) {
            facts.know("zone.width", zone.width(), "declared formula of the rule set, or the engineer's strip");
        } else {
            facts.miss("zone.width", "is not one figure: the zones are those of a standard");
        }
        if (zone.tributary() > 0) {
            facts.know("zone.tributary_length", zone.tributary(), "half the spans on either side, whole overhangs");
        } else {
            facts.miss("zone.tributary_length", NO_SUPPORT);
        }
        Optional<Double> spacing = system.si("clip_spacing");
        if (spacing.isPresent() && zone.tributary() > 0) {
            facts.know("zone.clip_area", zone.tributary() * spacing.get(), "tributary length x clip spacing");
        } else {
            facts.miss("zone.clip_area", spacing.isEmpty() ? unstated(system, "clip_spacing") : NO_SUPPORT);
        }
    }

    private static void wind(Facts facts, ZoneUplift uplift) {
        facts.know("zone.given", uplift.given(), "")
                .know("zone.standard", uplift.standard().isEmpty() ? "no standard" : uplift.standard(), "")
                .know("zone.source", uplift.source().isEmpty() ? "no source" : uplift.source(), "")
                .know("zone.how", uplift.how(), "");
        pressure(facts, "zone.suction", uplift.suction(), uplift.how(), uplift.how());
        pressure(
                facts,
                "zone.pressing",
                uplift.pressing(),
                uplift.how(),
                uplift.suction().isEmpty() ? uplift.how() : "pressing on to the roof is not among what " + by(uplift));
        if (uplift.loadFactor().isPresent()) {
            facts.know(
                    "zone.load_factor",
                    uplift.loadFactor().getAsDouble(),
                    uplift.given() ? "given pressures are not multiplied" : "wind.load_factor");
        } else {
            facts.miss("zone.load_factor", "is not stated; add wind.load_factor to runtrue.yaml");
        }
    }

    private static String by(ZoneUplift uplift) {
        return uplift.given() ? "the engineer gives" : uplift.standard() + " gives here";
    }

    private static void pressure(Facts facts, String name, OptionalDouble value, String evidence, String why) {
        if (value.isPresent()) {
            facts.know(name, value.getAsDouble(), evidence);
        } else {
            facts.miss(name, "is not known: " + why);
        }
    }

    private static void clips(Facts facts, PlaneZone zone, RoofSystem system) {
        Optional<ClipDemand> clip = zone.uplift().clip();
        if (clip.isPresent()) {
            facts.know("zone.clip_force", clip.get().force(), "suction x load factor x clip area")
                    .know("zone.spacing_allowed", clip.get().tributary(), "force on one clip against its resistance")
                    .know("zone.clip_density", clip.get().density(), "spacing allowed x clip spacing");
            return;
        }
        String why = lacking(zone, system);
        facts.miss("zone.clip_force", why).miss("zone.spacing_allowed", why).miss("zone.clip_density", why);
    }

    private static String lacking(PlaneZone zone, RoofSystem system) {
        if (zone.uplift().suction().isEmpty()) {
            return "is not known: " + zone.uplift().how();
        } else if (zone.uplift().loadFactor().isEmpty()) {
            return "is not known: wind.load_factor is not stated; add it to runtrue.yaml";
        } else if (zone.zone().tributary() <= 0) {
            return NO_SUPPORT;
        }
        return unstated(system, system.si("clip_spacing").isEmpty() ? "clip_spacing" : "clip_resistance");
    }

    private static String unstated(RoofSystem system, String value) {
        return "is not known: roof system " + system.name() + " states no " + value;
    }
}

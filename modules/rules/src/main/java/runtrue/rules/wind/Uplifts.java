package runtrue.rules.wind;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.roof.Zone;
import runtrue.rules.RoofSystem;
import runtrue.wind.ClipDemand;
import runtrue.wind.ClipLayout;
import runtrue.wind.Pressure;
import runtrue.wind.WindPlace;

/** What lifts on zones, and what that asks of the clips of a roof system. */
final class Uplifts {
    /** Where no clip area is known: the least that the standards' figures go down to for all zones, square metres. */
    private static final double SMALL = 1;

    private final RoofSystem system;
    private final WindSetting wind;

    Uplifts(RoofSystem system, WindSetting wind) {
        this.system = system;
        this.wind = wind;
    }

    /** Loaded area of the clip with the longest tributary length, square metres. */
    double clipArea(double tributary) {
        return tributary > 0 ? system.si("clip_spacing").map(s -> s * tributary).orElse(SMALL) : SMALL;
    }

    /**
     * Of a zone.
     *
     * @param places that it is made of, one or more; the worst of them counts
     * @param standard whose pressures they are
     */
    ZoneUplift of(Zone zone, List<WindPlace> places, String standard) {
        boolean given = wind.given().isPresent();
        double area = clipArea(zone.tributary());
        WindPlace worst = places.stream()
                .max(Comparator.comparingDouble(p -> p.suction(area).orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
        Pressure governing = worst.governing(area).pressure().at(area);
        OptionalDouble factor = given ? OptionalDouble.of(1) : wind.loadFactor();
        String label = worst.governing(area).zone().label();
        return new ZoneUplift(
                worst.suction(area),
                pressing(places, area),
                factor,
                factor.isPresent() ? clip(zone, places, factor.getAsDouble()) : Optional.empty(),
                given,
                standard,
                governing.source().sentence(),
                (given ? "" : label + ": ") + governing.how());
    }

    private static OptionalDouble pressing(List<WindPlace> places, double area) {
        if (places.stream().anyMatch(p -> p.pressing(area).isEmpty())) {
            return OptionalDouble.empty();
        }
        return places.stream().mapToDouble(p -> p.pressing(area).orElse(0)).max();
    }

    /** A pressure times the factor against a resistance is the pressure against the resistance over the factor. */
    private Optional<ClipDemand> clip(Zone zone, List<WindPlace> places, double factor) {
        Optional<Double> spacing = system.si("clip_spacing");
        Optional<Double> resistance = system.si("clip_resistance");
        if (spacing.isEmpty() || resistance.isEmpty() || zone.tributary() <= 0) {
            return Optional.empty();
        }
        ClipLayout clips = new ClipLayout(zone.tributary(), spacing.get(), resistance.get() / factor);
        List<ClipDemand> demands =
                places.stream().flatMap(p -> ClipDemand.at(p, clips).stream()).toList();
        if (demands.size() < places.size()) {
            return Optional.empty();
        }
        double force = demands.stream().mapToDouble(ClipDemand::force).max().orElse(0);
        double tributary =
                demands.stream().mapToDouble(ClipDemand::tributary).min().orElse(0);
        return Optional.of(new ClipDemand(
                force * factor, force * factor / resistance.get(), tributary, 1 / (tributary * spacing.get())));
    }
}

package runtrue.wind;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import runtrue.wind.site.EurocodeSite;

/** What is said to satisfy a place does, in every place of a roof. */
class ClipProperties {
    private static final WindResult HALL =
            WindPressures.of(EurocodeSite.recommended(28, "II"), TestRoofs.duo(60, 32, 3.71, 8, 15));

    @Property(tries = 30)
    void clips_at_the_spacing_that_satisfies_are_just_not_overloaded(
            @ForAll @DoubleRange(min = 0.3, max = 3) double tributary,
            @ForAll @DoubleRange(min = 0.2, max = 0.7) double width,
            @ForAll @DoubleRange(min = 200, max = 5000) double resistance) {
        ClipLayout clips = new ClipLayout(tributary, width, resistance);
        for (WindPlace place : HALL.places()) {
            ClipDemand demand = ClipDemand.at(place, clips).orElseThrow();
            double utilised = utilisation(place, demand.tributary(), width, resistance);

            assertThat(utilised).isLessThanOrEqualTo(1 + 1e-9);
            assertThat(demand.utilisation() > 1).isEqualTo(demand.tributary() < tributary);
            if (demand.tributary() < 19.9) {
                assertThat(utilisation(place, demand.tributary() + 0.001, width, resistance))
                        .isGreaterThan(1);
            }
        }
    }

    private static double utilisation(WindPlace place, double tributary, double width, double resistance) {
        return ClipDemand.at(place, new ClipLayout(tributary, width, resistance))
                .orElseThrow()
                .utilisation();
    }
}

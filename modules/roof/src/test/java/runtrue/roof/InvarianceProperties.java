package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;

/** What must hold for any roof, wherever it stands. */
class InvarianceProperties {
    @Property(tries = 60)
    void areas_runs_and_edges_do_not_depend_on_where_a_roof_stands(
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double turn,
            @ForAll @DoubleRange(min = -900, max = 900) double x,
            @ForAll @DoubleRange(min = 2, max = 50) double degrees,
            @ForAll @DoubleRange(min = 8, max = 40) double length) {
        List<ReadElement> still = RoofFixtures.hipRoof(length, 7.5, Math.toRadians(degrees), 0.15);
        QuaternionRotation rotation = QuaternionRotation.fromAxisAngle(Vector3D.Unit.PLUS_Z, turn);
        List<ReadElement> moved = still.stream()
                .map(e -> RoofFixtures.moved(e, rotation, Vector3D.of(x, -2 * x, 7)))
                .toList();

        Roof a = Roofs.layOut(still, List.of(), RoofFixtures.settings(0.5));
        Roof b = Roofs.layOut(moved, List.of(), RoofFixtures.settings(0.5));

        for (EdgeKind kind : EdgeKind.values()) {
            assertThat(PublishedRoofsTest.total(b, kind))
                    .as(kind.label())
                    .isCloseTo(PublishedRoofsTest.total(a, kind), within(1e-6));
        }
        assertThat(runs(b)).containsExactly(runs(a), within(1e-6));
    }

    @Property(tries = 60)
    void sheets_cover_each_plane_exactly_once(
            @ForAll @DoubleRange(min = 2, max = 50) double degrees,
            @ForAll @DoubleRange(min = 8, max = 40) double length,
            @ForAll @DoubleRange(min = 0.3, max = 1.1) double cover) {
        for (SetOut setOut : SetOut.values()) {
            RoofSettings settings = RoofFixtures.settings(cover);
            settings = new RoofSettings(
                    cover,
                    setOut,
                    settings.buildUpDepth(),
                    settings.reach(),
                    settings.origin(),
                    settings.trueNorth(),
                    settings.tolerances());
            Roof roof =
                    Roofs.layOut(RoofFixtures.hipRoof(length, 7.5, Math.toRadians(degrees), 0.15), List.of(), settings);
            assertThat(roof.planes())
                    .hasSize(4)
                    .allSatisfy(l -> assertThat(
                                    l.sheets().stream().mapToDouble(Sheet::area).sum())
                            .isCloseTo(l.plane().area(), within(1e-6)));
        }
    }

    @Property(tries = 40)
    void zones_cover_each_plane_exactly_once(
            @ForAll @DoubleRange(min = 2, max = 50) double degrees,
            @ForAll @DoubleRange(min = 8, max = 40) double length,
            @ForAll @DoubleRange(min = 0.2, max = 3) double width) {
        Roof roof = Roofs.layOut(
                RoofFixtures.hipRoof(length, 7.5, Math.toRadians(degrees), 0.15),
                List.of(),
                RoofFixtures.settings(0.5));
        double zones = Roofs.zones(roof, roof.bodies().get(0), width).stream()
                .mapToDouble(Zone::area)
                .sum();
        double planes =
                roof.planes().stream().mapToDouble(l -> l.plane().area()).sum();
        assertThat(zones).isCloseTo(planes, within(0.02 * 4 + 1e-6));
    }

    private static double[] runs(Roof roof) {
        double[] runs =
                roof.planes().stream().mapToDouble(PlaneLayout::longestRun).toArray();
        Arrays.sort(runs);
        return runs;
    }
}

package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.bar;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.junit.jupiter.api.Test;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.BearingKind;
import runtrue.roof.bearing.LineFault;
import runtrue.roof.bearing.Standing;
import runtrue.roof.bearing.TruePlane;

/** Supports of invented roofs, out of true by amounts worked by hand. */
class TruePlanesTest {
    private static final double PITCH = Math.toRadians(6);

    private static Vector3D at(double u, double v, double w) {
        return p(u, v * Math.cos(PITCH) - w * Math.sin(PITCH), v * Math.sin(PITCH) + w * Math.cos(PITCH));
    }

    private static ReadElement roof() {
        return slab("south", 0.16, at(0, 0, 0), at(12, 0, 0), at(12, 8, 0), at(0, 8, 0));
    }

    /** A purlin 12 m long with its top at -0.16 plus what it is off by at either end. */
    private static ReadElement purlin(double v, double offFrom, double offTo) {
        Vector3D up = at(0, 0, 1).subtract(at(0, 0, 0));
        return bar("purlin " + v, 0.1, at(0, v, -0.16 + offFrom), at(12, v, -0.16 + offTo), up);
    }

    private static List<ReadElement> members(double from, double to) {
        List<ReadElement> members = new ArrayList<>();
        for (double v : new double[] {0.5, 2, 5, 6.5, 7.5}) {
            members.add(purlin(v, 0, 0));
        }
        members.add(purlin(3.5, from, to));
        return members;
    }

    private static Bearing bearing(List<ReadElement> roofs, List<ReadElement> members) {
        return Roofs.layOut(roofs, members, settings(0.5)).planes().get(0).bearing();
    }

    @Test
    void a_purlin_that_leans_is_off_by_its_worse_end_and_twisted_by_the_difference() {
        Bearing bearing = bearing(List.of(roof()), members(-0.004, 0.009));
        TruePlane truth = bearing.truePlane().orElseThrow();

        assertThat(bearing.kind()).isEqualTo(BearingKind.PURLINS);
        assertThat(truth.level()).isCloseTo(-0.16, within(1e-9));
        assertThat(truth.worst().line()).isEqualTo(3);
        assertThat(truth.worst().atFrom()).isCloseTo(-0.004, within(1e-6));
        assertThat(truth.worst().atTo()).isCloseTo(0.009, within(1e-6));
        assertThat(truth.step()).hasValueCloseTo(0.009, within(1e-6));
        assertThat(truth.twist()).hasValueCloseTo(0.013, within(1e-6));
    }

    @Test
    void supports_that_share_a_tilt_show_it_in_the_plane_that_fits_them_best() {
        List<ReadElement> members = new ArrayList<>();
        for (double v : new double[] {0.5, 2, 3.5, 5, 6.5}) {
            members.add(purlin(v, v * 0.002, v * 0.002));
        }

        TruePlane truth = bearing(List.of(roof()), members).truePlane().orElseThrow();

        // 2 mm a metre up the fall: atan(0.002).
        assertThat(truth.tilt()).hasValueCloseTo(Math.atan(0.002), within(1e-6));
        assertThat(truth.deviation()).isCloseTo(0.006, within(1e-6));
    }

    @Test
    void a_stub_that_rises_above_the_purlins_is_proud_and_one_under_them_is_not() {
        List<ReadElement> members = members(0, 0);
        Vector3D up = at(0, 0, 1).subtract(at(0, 0, 0));
        members.add(bar("bolt", 0.03, at(4, 4.2, -0.143), at(4.04, 4.2, -0.143), up));
        members.add(bar("cleat", 0.05, at(6, 4.2, -0.162), at(6.2, 4.2, -0.162), up));

        Bearing bearing = bearing(List.of(roof()), members);

        assertThat(bearing.proud()).singleElement().satisfies(n -> {
            assertThat(n.element().globalId()).isEqualTo("bolt");
            assertThat(n.above()).isCloseTo(0.017, within(1e-6));
            assertThat(n.standing()).isEqualTo(Standing.PROUD);
        });
    }

    @Test
    void a_purlin_left_out_of_a_bay_is_missing_there_and_one_cut_short_bares_the_end() {
        Vector3D up = at(0, 0, 1).subtract(at(0, 0, 0));
        List<ReadElement> members = members(0, 0);
        members.remove(5);
        members.add(bar("west", 0.1, at(0, 3.5, -0.16), at(4, 3.5, -0.16), up));
        members.add(bar("east", 0.1, at(6, 3.5, -0.16), at(11, 3.5, -0.16), up));

        assertThat(bearing(List.of(roof()), members).faults())
                .extracting(f -> f.kind() + " " + f.line() + " " + Math.round(f.u().length() * 1000))
                .containsExactly(LineFault.Kind.MISSING + " 3 2000", LineFault.Kind.STOPS_SHORT + " 3 1000");
    }

    /** Lines at 1.5 m but for the bay from u = 4 to 8, where they lie at their own spacing; one of these may be left out. */
    private static List<ReadElement> setOutForItself(double... within) {
        Vector3D up = at(0, 0, 1).subtract(at(0, 0, 0));
        List<ReadElement> members = new ArrayList<>(List.of(purlin(0.5, 0, 0), purlin(6.5, 0, 0)));
        for (double v : new double[] {2, 3.5, 5}) {
            members.add(bar("west " + v, 0.1, at(0, v, -0.16), at(4, v, -0.16), up));
            members.add(bar("east " + v, 0.1, at(8, v, -0.16), at(12, v, -0.16), up));
        }
        for (double v : within) {
            members.add(bar("bay " + v, 0.1, at(4, v, -0.16), at(8, v, -0.16), up));
        }
        return members;
    }

    @Test
    void in_a_bay_set_out_at_its_own_spacing_no_line_is_missing() {
        assertThat(bearing(List.of(roof()), setOutForItself(2.5, 4.5)).faults()).isEmpty();
        assertThat(bearing(List.of(roof()), setOutForItself(1.7, 2.9, 4.1, 5.3)).faults())
                .isEmpty();
    }

    /**
     * Spaces of 1.2, 1.2, 2.4 and 1.2 m: one line is lost, at 4.1 m. Of the others' lines in the gap, at 3.5 and 5 m, the
     * nearer one tells of it.
     */
    @Test
    void in_a_bay_at_its_own_spacing_that_lost_a_line_the_gap_is_told_of() {
        assertThat(bearing(List.of(roof()), setOutForItself(1.7, 2.9, 5.3)).faults())
                .extracting(f -> f.kind() + " " + Math.round(f.v() * 10))
                .containsExactly(LineFault.Kind.MISSING + " 35");
    }

    /** Spaces of 1, 3 and 1.5 m with 1 m as the usual one: two are lost, at 2.5 and 3.5 m. */
    @Test
    void a_gap_with_room_for_two_lines_is_told_of_twice() {
        assertThat(bearing(List.of(roof()), setOutForItself(1.5, 4.5, 5.5)).faults())
                .extracting(f -> f.kind() + " " + Math.round(f.v() * 10))
                .containsExactly(LineFault.Kind.MISSING + " 20", LineFault.Kind.MISSING + " 35");
    }

    @Test
    void a_bay_with_some_of_the_others_lines_and_none_of_its_own_has_lost_the_rest() {
        assertThat(bearing(List.of(roof()), setOutForItself(2, 5)).faults())
                .extracting(f -> f.kind() + " " + Math.round(f.v() * 10))
                .containsExactly(LineFault.Kind.MISSING + " 35");
        assertThat(bearing(List.of(roof()), setOutForItself(3.5)).faults()).hasSize(2);
    }

    @Test
    void close_and_slight_supports_are_battens_and_members_up_the_fall_alone_are_rafters() {
        Vector3D up = at(0, 0, 1).subtract(at(0, 0, 0));
        List<ReadElement> battens = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            battens.add(bar("batten " + i, 0.04, at(0, 0.2 + 0.4 * i, -0.16), at(12, 0.2 + 0.4 * i, -0.16), up));
        }
        List<ReadElement> rafters = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            rafters.add(bar("rafter " + i, 0.1, at(1 + i, 0, -0.16), at(1 + i, 8, -0.16), up));
        }

        assertThat(bearing(List.of(roof()), battens).kind()).isEqualTo(BearingKind.BATTENS);
        assertThat(bearing(List.of(roof()), rafters).kind()).isEqualTo(BearingKind.RAFTERS);
        assertThat(bearing(List.of(roof()), List.of()).kind()).isEqualTo(BearingKind.UNKNOWN);
    }

    @Property(tries = 40)
    void deviations_do_not_depend_on_where_a_roof_stands_or_in_what_unit_and_hand_it_was_drawn(
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double turn,
            @ForAll @DoubleRange(min = -900, max = 900) double x,
            @ForAll @DoubleRange(min = -15, max = 15) double millimetresFrom,
            @ForAll @DoubleRange(min = -15, max = 15) double millimetresTo,
            @ForAll boolean feet,
            @ForAll boolean mirrored) {
        double from = millimetresFrom / 1000;
        double to = millimetresTo / 1000;
        List<ReadElement> members = members(from, to);
        QuaternionRotation rotation = QuaternionRotation.fromAxisAngle(Vector3D.Unit.PLUS_Z, turn);
        List<ReadElement> roofs = RoofFixtures.drawnOtherwise(List.of(roof()), feet, mirrored).stream()
                .map(e -> RoofFixtures.moved(e, rotation, Vector3D.of(x, -2 * x, 7)))
                .toList();
        List<ReadElement> moved = RoofFixtures.drawnOtherwise(members, feet, mirrored).stream()
                .map(e -> RoofFixtures.moved(e, rotation, Vector3D.of(x, -2 * x, 7)))
                .toList();

        TruePlane still = bearing(List.of(roof()), members).truePlane().orElseThrow();
        TruePlane truth = bearing(roofs, moved).truePlane().orElseThrow();

        assertThat(truth.level()).isCloseTo(still.level(), within(1e-6));
        assertThat(truth.deviation()).isCloseTo(still.deviation(), within(1e-6));
        assertThat(truth.deviation()).isCloseTo(Math.max(Math.abs(from), Math.abs(to)), within(2e-5));
        assertThat(truth.step().orElseThrow()).isCloseTo(still.step().orElseThrow(), within(1e-6));
        assertThat(truth.twist().orElseThrow()).isCloseTo(still.twist().orElseThrow(), within(1e-6));
        assertThat(truth.tilt().orElseThrow()).isCloseTo(still.tilt().orElseThrow(), within(1e-6));
    }
}

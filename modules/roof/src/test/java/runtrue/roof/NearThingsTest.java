package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.bar;
import static runtrue.roof.RoofFixtures.ofClass;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.ifc.Element;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.Standing;

/** A level roof of 12 by 8 m on purlins whose tops lie 0.16 m below its skin, and what stands around it. */
class NearThingsTest {
    private static final Vector3D UP = p(0, 0, 1);
    private static final Vector3D NORTH = p(0, 1, 0);

    private static ReadElement upright(String ifcClass, String name, double x, double y, double from, double to) {
        return ofClass(ifcClass, bar(name, 0.2, p(x, y, from), p(x, y, to), NORTH));
    }

    private static ReadElement levelBar(String ifcClass, String name, Vector3D from, Vector3D to) {
        return ofClass(ifcClass, bar(name, 0.1, from, to, UP));
    }

    /** What is found near the roof when these things are around, which are read whatever is asked. */
    private static Bearing near(ReadElement... things) {
        return near(new Around(List.of(things), List.of()));
    }

    private static Bearing near(Surround around) {
        List<ReadElement> members = new ArrayList<>();
        for (double y : new double[] {0.5, 2, 3.5, 5, 6.5, 7.5}) {
            members.add(bar("purlin " + y, 0.1, p(0, y, -0.16), p(12, y, -0.16), UP));
        }
        ReadElement roof = slab("roof", 0.05, p(0, 0, 0), p(12, 0, 0), p(12, 8, 0), p(0, 8, 0));
        return Roofs.layOut(List.of(roof), members, around, settings(0.5))
                .planes()
                .get(0)
                .bearing();
    }

    private record Around(List<ReadElement> things, List<Box> unread) implements Surround {
        @Override
        public List<ReadElement> within(Role role, Where where) {
            return role == Role.THING ? things : List.of();
        }

        @Override
        public List<Element> unread(Role role, Where where) {
            return unread.stream()
                    .filter(where::mayMeet)
                    .map(box -> RoofFixtures.element("unread", "", List.of()).element())
                    .toList();
        }

        @Override
        public List<Element> unlocated(Role role) {
            return List.of();
        }
    }

    @Test
    void a_pipe_that_goes_through_and_a_tray_that_rises_above_the_purlins_are_found_with_how_far() {
        Bearing bearing = near(
                upright("IfcPipeSegment", "vent", 4, 4, -2, 0.6),
                levelBar("IfcCableCarrierSegment", "tray", p(6, 4, -0.13), p(9, 4, -0.13)),
                levelBar("IfcDuctSegment", "duct", p(6, 3, -0.4), p(9, 3, -0.4)),
                levelBar("IfcRailing", "rail", p(1, 4, 1), p(9, 4, 1)));

        assertThat(bearing.proud())
                .extracting(n -> n.element().globalId(), NearThing::standing)
                .containsExactly(tuple("vent", Standing.THROUGH), tuple("tray", Standing.PROUD));
        assertThat(bearing.proud().get(0).above()).isCloseTo(0.76, within(1e-6));
        assertThat(bearing.proud().get(1).above()).isCloseTo(0.03, within(1e-6));
    }

    /** A pipe on the facade that is bent over the roof: a bar beside the eave and one above the skin, as one body. */
    @Test
    void what_comes_down_beside_the_roof_and_runs_above_it_stands_upon_it() {
        ReadElement beside = upright("IfcPipeSegment", "pipe", 4, -0.5, -3, 0.4);
        ReadElement above = bar("pipe", 0.1, p(4, -0.5, 0.4), p(4, 5, 0.4), UP);

        assertThat(near(RoofFixtures.joined(beside, above)).proud()).isEmpty();
    }

    @Test
    void a_parapet_along_an_edge_is_what_the_sheets_end_against_and_a_wall_across_the_roof_is_not() {
        ReadElement parapet = ofClass("IfcWall", bar("parapet", 0.4, p(0, 0.2, 0.3), p(12, 0.2, 0.3), UP));
        ReadElement untrimmed = ofClass("IfcWall", bar("untrimmed", 0.4, p(3, 1, -0.05), p(3, 7, -0.05), UP));
        ReadElement across = ofClass("IfcWall", bar("across", 0.4, p(6, 1, 0.2), p(6, 7, 0.2), UP));

        assertThat(near(parapet, untrimmed, across).proud())
                .extracting(n -> n.element().globalId(), NearThing::standing)
                .containsExactly(tuple("across", Standing.THROUGH));
    }

    /** The unread are asked for at the contact plane, which a box below, above or beside it does not reach. */
    @Test
    void only_what_can_reach_the_contact_plane_is_held_against_the_plane_when_it_was_not_read() {
        Surround.Box reaching = new Surround.Box(p(3, 3, -1), p(4, 4, -0.1));
        Surround.Box below = new Surround.Box(p(3, 3, -3), p(4, 4, -1));
        Surround.Box above = new Surround.Box(p(3, 3, 0.1), p(4, 4, 1));
        Surround.Box beside = new Surround.Box(p(13, 3, -1), p(14, 4, 1));

        Bearing bearing = near(new Around(List.of(), List.of(reaching, below, above, beside)));

        assertThat(bearing.unread()).hasSize(1);
        assertThat(bearing.unreadSupports()).hasSize(1);
    }
}

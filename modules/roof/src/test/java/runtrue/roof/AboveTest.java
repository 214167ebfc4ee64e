package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.Element;
import runtrue.roof.above.Fixture;
import runtrue.shape.Face;

/** What stands above a roof that rises 1 in 10 to the north over 12 by 10 m, and the faces that clips are screwed to. */
class AboveTest {
    private static final Vector3D UP = p(0, 0, 1);

    private static Roof roof(List<ReadElement> members, List<ReadElement> walls, List<ReadElement> fixtures) {
        ReadElement roof = slab("roof", 0.1, p(0, 0, 3), p(12, 0, 3), p(12, 10, 4), p(0, 10, 4));
        return Roofs.layOut(List.of(roof), members, new Around(walls, fixtures), settings(0.5));
    }

    private record Around(List<ReadElement> walls, List<ReadElement> fixtures) implements Surround {
        @Override
        public List<ReadElement> within(Role role, Where where) {
            return role == Role.WALL ? walls : role == Role.FIXTURE ? fixtures : List.of();
        }

        @Override
        public List<Element> unread(Role role, Where where) {
            return List.of();
        }

        @Override
        public List<Element> unlocated(Role role) {
            return List.of();
        }
    }

    private static ReadElement wall(String name, double x0, double y0, double x1, double y1, double top) {
        List<Vector3D> above = List.of(p(x0, y0, top), p(x1, y0, top), p(x1, y1, top), p(x0, y1, top));
        List<Vector3D> below = above.stream().map(c -> p(c.getX(), c.getY(), 0)).toList();
        return ofClass("IfcWall", RoofFixtures.element(name, "class", RoofFixtures.prism(above, below)));
    }

    /** The head lies at 4, the verge at 3.2, 3.5 and 3.8 where it is looked at: on the mean 1.5 below a level top at 5. */
    @ParameterizedTest
    @CsvSource({"head, 0, 10, 12, 10.3, 5.5, 1.5", "verge, -0.3, 0, 0, 10, 5, 1.5"})
    void walls_rise_above_the_edges_that_end_against_them(
            String name, double x0, double y0, double x1, double y1, double top, double rise) {
        Roof roof = roof(List.of(), List.of(wall(name, x0, y0, x1, y1, top)), List.of());

        assertThat(roof.edges())
                .filteredOn(e -> e.kind() == EdgeKind.ABUTMENT)
                .singleElement()
                .satisfies(e -> assertThat(roof.above().walls().get(e.id())).isCloseTo(rise, within(1e-9)));
    }

    @Test
    void edges_with_nothing_above_have_no_rise() {
        assertThat(roof(List.of(), List.of(), List.of()).above().walls()).isEmpty();
    }

    private static ReadElement box(String name, double x, double y, double foot) {
        double skin = 3 + y / 10;
        return ofClass(
                "IfcSolarDevice", bar(name, 0.4, p(x, y, skin + foot + 0.4), p(x + 2, y, skin + foot + 0.4), UP));
    }

    @Test
    void things_stand_on_a_plane_when_their_foot_is_near_its_skin_and_their_middle_over_it() {
        Roof roof = roof(
                List.of(),
                List.of(),
                List.of(
                        box("on rails", 4, 5, 0.1),
                        box("hung above", 4, 5, 1.5),
                        box("below", 4, 5, -1),
                        box("beside", 14, 5, 0.1)));

        assertThat(roof.above().fixtures()).singleElement().satisfies(f -> {
            assertThat(f.element().name()).isEqualTo("on rails");
            assertThat(f.plane()).isEqualTo(roof.planes().get(0).plane().id());
            assertThat(f.u().length()).isCloseTo(2, within(1e-9));
            // It is level over a roof of 1 in 10, 0.4 wide: its uphill foot is 0.02 nearer to the skin.
            assertThat(f.w().from()).isCloseTo(0.08 / Math.hypot(1, 0.1), within(1e-9));
        });
        assertThat(roof.above().fixtures()).extracting(Fixture::w).allMatch(w -> w.length() > 0.4);
    }

    /** A Z of 65 mm flanges, 2 mm thick and 200 deep: its upper flange alone, and what is under it. */
    @Test
    void a_z_offers_clips_one_of_its_two_flanges_and_the_thickness_of_its_metal() {
        double t = 0.002;
        double[][] section = {
            {0, 0}, {0, -0.2 + t}, {-0.063, -0.2 + t}, {-0.063, -0.2}, {t, -0.2}, {t, -t}, {0.065, -t}, {0.065, 0}
        };
        assertThat(piece(section)).satisfies(p -> {
            assertThat(p.flange()).isCloseTo(0.065, within(1e-9));
            assertThat(p.thickness().orElseThrow()).isCloseTo(0.002, within(1e-9));
        });
    }

    @Test
    void a_timber_is_as_thick_as_it_is_deep() {
        double[][] section = {{0, 0}, {0, -0.16}, {0.08, -0.16}, {0.08, 0}};
        assertThat(piece(section)).satisfies(p -> {
            assertThat(p.flange()).isCloseTo(0.08, within(1e-9));
            assertThat(p.thickness().orElseThrow()).isCloseTo(0.16, within(1e-9));
        });
    }

    @Test
    void a_member_drawn_as_a_surface_has_no_thickness() {
        List<Vector3D> top = List.of(p(0, 5, 3.3), p(12, 5, 3.3), p(12, 5.08, 3.3), p(0, 5.08, 3.3));
        ReadElement surface = RoofFixtures.element("surface", "class", List.of(new Face(UP, top, List.of())));
        assertThat(piece(surface).thickness()).isEmpty();
    }

    /** Of a purlin with this section (along the fall, square to the roof), its top 0.1 below the skin half-way up. */
    private static SupportPiece piece(double[][] section) {
        Vector3D fall = p(0, 10, 1).normalize();
        Vector3D out = p(0, -1, 10).normalize();
        Vector3D at = p(0, 5, 3.5).add(out.multiply(-0.1));
        List<Vector3D> west = new ArrayList<>();
        for (double[] corner : section) {
            west.add(at.add(fall.multiply(corner[0])).add(out.multiply(corner[1])));
        }
        List<Vector3D> east = west.stream().map(c -> c.add(p(12, 0, 0))).toList();
        return piece(RoofFixtures.element("purlin", "class", RoofFixtures.prism(east, west)));
    }

    private static SupportPiece piece(ReadElement member) {
        return roof(List.of(member), List.of(), List.of())
                .planes()
                .get(0)
                .supports()
                .get(0)
                .pieces()
                .get(0);
    }
}

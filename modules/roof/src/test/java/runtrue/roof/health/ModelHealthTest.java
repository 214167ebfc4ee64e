package runtrue.roof.health;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.halls.SharedFiles;
import runtrue.roof.health.HealthLine.Item;
import runtrue.roof.stated.OpenModel;

class ModelHealthTest {
    /** The six sides of a box, corners counter-clockwise seen from outside. */
    private static final String[] BOX = {"0321", "4567", "0154", "1265", "2376", "3047"};

    @Test
    void a_sound_model_gives_no_line() {
        assertThat(of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).bar("p", 0, 1, 2.8, 10, 0.2)))
                .isEmpty();
    }

    @Test
    void two_slabs_in_one_place_are_one_modelled_twice() {
        List<HealthLine> lines =
                of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).slab("b", 0, 0, 3, 10, 5, 0.2));

        assertThat(lines).extracting(HealthLine::kind).containsExactly(HealthKind.SAME_GEOMETRY);
        assertThat(ids(lines.get(0))).containsExactly("a", "b");
        assertThat(lines.get(0).items().get(0).detail()).startsWith("as IfcSlab \"Part b\" (#");
    }

    @Test
    void slabs_that_reach_into_each_other_overlap_by_an_area() {
        List<HealthLine> lines =
                of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).slab("b", 9, 0, 3, 10, 5, 0.2));

        assertThat(lines).extracting(HealthLine::kind).containsExactly(HealthKind.OVERLAP);
        assertThat(lines.get(0).items().get(0).detail()).startsWith("5.00 m2 in common with IfcSlab \"Part b\"");
    }

    @Test
    void slabs_that_touch_do_not_overlap() {
        assertThat(of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).slab("b", 10, 0, 3, 10, 5, 0.2)))
                .isEmpty();
    }

    @Test
    void layers_one_above_the_other_do_not_overlap() {
        assertThat(of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).slab("b", 0, 0, 3.2, 10, 5, 0.1)))
                .isEmpty();
    }

    @Test
    void a_roof_of_forty_kilometres_is_no_roof() {
        assertThat(of(new SmallModel().slab("a", -20_000, 0, 3, 40_000, 5000, 0.2)))
                .extracting(l -> l.kind() + ": " + l.detail())
                .containsExactly("SIZE: its roof is 40000 m long");
    }

    @Test
    void a_roof_of_forty_millimetres_is_none_either() {
        assertThat(of(new SmallModel().slab("a", 0, 0, 3, 0.4, 0.3, 0.001)))
                .extracting(l -> l.kind() + ": " + l.detail())
                .contains("SIZE: its roof is 400.0 mm long");
    }

    @ParameterizedTest
    @CsvSource({
        "6, 0.003, its section is 3.00 mm deep",
        "300, 0.2, it is 300 m long",
        "60, 7, its section is 7.0 m deep"
    })
    void a_member_of_such_a_size_is_a_wrong_unit(double length, double size, String detail) {
        List<HealthLine> lines =
                of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).bar("p", 0, 50, 1, length, size));

        assertThat(lines).extracting(HealthLine::kind).containsExactly(HealthKind.SIZE);
        assertThat(lines.get(0).items())
                .extracting(i -> i.element().globalId() + " " + i.detail())
                .containsExactly("p " + detail);
    }

    @ParameterizedTest
    @CsvSource({"9000, false", "12000, true"})
    void far_from_the_origin_single_precision_loses_the_millimetre(double metres, boolean far) {
        List<HealthLine> lines = of(new SmallModel().slab("a", metres, 0, 3, 10, 5, 0.2));

        assertThat(lines.stream().anyMatch(l -> l.kind() == HealthKind.FAR_AWAY))
                .isEqualTo(far);
    }

    @Test
    void what_the_model_leaves_unsaid_is_listed_last() {
        List<HealthLine> lines = of(new SmallModel()
                .withoutMaterial()
                .withoutStorey()
                .withoutTrueNorth()
                .slab("a", 0, 0, 3, 10, 5, 0.2));

        assertThat(lines)
                .extracting(HealthLine::kind)
                .containsExactly(HealthKind.NO_STOREY, HealthKind.NO_TRUE_NORTH, HealthKind.NO_MATERIAL);
    }

    @Test
    void a_global_id_used_twice_names_the_other_element() {
        List<HealthLine> lines =
                of(new SmallModel().slab("a", 0, 0, 3, 10, 5, 0.2).slab("a", 30, 0, 3, 10, 5, 0.2));

        assertThat(lines).extracting(HealthLine::kind).containsExactly(HealthKind.SAME_GLOBAL_ID);
        assertThat(lines.get(0).items())
                .hasSize(2)
                .allMatch(i -> i.detail().startsWith("shared with IfcSlab \"Part a\""));
    }

    @Test
    void a_surface_is_not_closed_and_without_layers_has_no_thickness() {
        List<HealthLine> lines = of(new SmallModel().withoutMaterial().shell("a", false, 10, 5, 0.2, "4567"));

        assertThat(lines)
                .extracting(HealthLine::kind)
                .containsExactly(HealthKind.OPEN_BODY, HealthKind.NO_THICKNESS, HealthKind.NO_MATERIAL);
    }

    @Test
    void a_surface_with_layers_has_their_thickness() {
        assertThat(of(new SmallModel().shell("a", false, 10, 5, 0.2, "4567")))
                .extracting(HealthLine::kind)
                .containsExactly(HealthKind.OPEN_BODY);
    }

    @Test
    void a_face_that_looks_inward_is_turned_and_told() {
        String[] faces = BOX.clone();
        faces[1] = "7654";

        List<HealthLine> lines = of(new SmallModel().shell("a", true, 10, 5, 0.2, faces));

        assertThat(lines).extracting(HealthLine::kind).containsExactly(HealthKind.RESERVATION);
        assertThat(lines.get(0).items().get(0).detail()).isEqualTo("1 of 6 faces looked into the body and were turned");
    }

    @Test
    void a_sound_shell_gives_no_line() {
        assertThat(of(new SmallModel().shell("a", true, 10, 5, 0.2, BOX))).isEmpty();
    }

    /** Kinds worked out from the files by hand and with an independent library, see the shared models' notes. */
    @ParameterizedTest
    @CsvSource({
        "nested-roofs-surface-sweep-ifc4.ifc, NO_TRUE_NORTH, ''",
        "composite-curve-slab-ifc4.ifc, NO_STOREY, 0EexEPBuDFA8ruSS$JA2nt",
    })
    void real_models_are_told_what_they_lack(String file, HealthKind kind, String globalId) {
        try (OpenModel model = OpenModel.read(SharedFiles.folder("models").resolve(file))) {
            List<HealthLine> lines = ModelHealth.of(List.of(model.model()), model.elements(), model.roof());

            assertThat(lines)
                    .filteredOn(l -> l.kind() == kind)
                    .singleElement()
                    .satisfies(l -> assertThat(globalId.isEmpty() || ids(l).contains(globalId))
                            .isTrue());
        }
    }

    private static List<HealthLine> of(SmallModel written) {
        try (OpenModel model = written.open()) {
            return ModelHealth.of(List.of(model.model()), model.elements(), model.roof());
        }
    }

    private static List<String> ids(HealthLine line) {
        return line.items().stream().map(Item::element).map(e -> e.globalId()).toList();
    }
}

package runtrue.cli.written;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Selection;
import runtrue.roof.EdgeKind;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.Roofs;
import runtrue.roof.SetOut;
import runtrue.roof.read.DropElements;
import runtrue.samples.ifc.AngleUnit;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.LengthUnit;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.Schema;
import runtrue.samples.ifc.Vec;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/**
 * A slab reads back as the same plane however the file describes it: in every schema, representation and unit, anywhere on
 * site and to any true north. What is expected follows from the trapezium that was written.
 */
class RepresentationsProperties {
    @Property(tries = 400)
    void a_slab_reads_back_as_it_was_written(
            @ForAll Schema schema,
            @ForAll SlopingSlab.Form form,
            @ForAll LengthUnit unit,
            @ForAll AngleUnit angles,
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double turn,
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double north,
            @ForAll @DoubleRange(min = -400_000, max = 400_000) double east,
            @ForAll("slabs") SlopingSlab slab)
            throws IOException {
        Assume.that(schema != Schema.IFC2X3 || form.isOld());
        IfcFile file = new IfcFile("slab.ifc", schema, unit, angles, "Invented", OptionalDouble.of(north));
        add(file, "Shed", Frame.turned(new Vec(east, -3 * east, 0), turn), slab, form);

        Roof roof = read(file.text());

        assertThat(roof.unplaced()).isEmpty();
        assertThat(roof.planes()).hasSize(1);
        RoofPlane plane = roof.planes().get(0).plane();
        assertThat(plane.pitch()).isCloseTo(slab.pitch(), within(1e-6));
        assertThat(plane.area()).isCloseTo(slab.area(), within(1e-5 * slab.area()));
        assertThat(plane.planArea()).isCloseTo(slab.area() * Math.cos(slab.pitch()), within(1e-5 * slab.area()));
        assertThat(plane.eaveLevel()).isCloseTo(slab.level(), within(1e-5));
        assertThat(plane.ridgeLevel()).isCloseTo(slab.ridgeLevel(), within(1e-5));
        assertThat(roof.planes().get(0).longestRun()).isCloseTo(slab.run(), within(1e-5));
        // The slab falls to the south of its building, which is turned counter-clockwise.
        double fall = Math.PI - turn - north;
        assertThat(Math.cos(plane.azimuthTrueNorth().orElseThrow() - fall)).isCloseTo(1, within(1e-9));
    }

    /** Two slabs against each other, each described in its own way: two planes and the ridge between them. */
    @Property(tries = 200)
    void a_gable_reads_back_with_its_ridge(
            @ForAll Schema schema,
            @ForAll SlopingSlab.Form southForm,
            @ForAll SlopingSlab.Form northForm,
            @ForAll LengthUnit unit,
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double turn,
            @ForAll @DoubleRange(min = -400_000, max = 400_000) double east,
            @ForAll("halvesOfGables") SlopingSlab south)
            throws IOException {
        double ridge = south.eave() - south.left() - south.right();
        Assume.that(schema != Schema.IFC2X3 || (southForm.isOld() && northForm.isOld()));
        IfcFile file = new IfcFile("gable.ifc", schema, unit, AngleUnit.DEGREE, "Invented", OptionalDouble.empty());
        double depth = 2 * south.run() * Math.cos(south.pitch());
        Vec corner = new Vec(
                east + south.eave() * Math.cos(turn) - depth * Math.sin(turn),
                -3 * east + south.eave() * Math.sin(turn) + depth * Math.cos(turn),
                0);
        SlopingSlab north = south.mirrored();
        add(file, "South", Frame.turned(new Vec(east, -3 * east, 0), turn), south, southForm);
        add(file, "North", Frame.turned(corner, turn + Math.PI), north, northForm);

        Roof roof = read(file.text());

        assertThat(roof.unplaced()).isEmpty();
        assertThat(roof.planes()).hasSize(2).allSatisfy(layout -> {
            assertThat(layout.plane().pitch()).isCloseTo(south.pitch(), within(1e-6));
            assertThat(layout.plane().area()).isCloseTo(south.area(), within(1e-5 * south.area()));
        });
        assertThat(roof.edges())
                .filteredOn(e -> e.kind() == EdgeKind.RIDGE)
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.length()).isCloseTo(ridge, within(1e-4));
                    assertThat(e.angle()).hasValueCloseTo(2 * south.pitch(), within(1e-6));
                });
    }

    private static void add(IfcFile file, String building, Frame frame, SlopingSlab slab, SlopingSlab.Form form) {
        Place storey = file.storey(file.building(building, frame), "Ground", 0);
        slab.shaped(file.element("IFCSLAB", "Roof"), form, file.bodies(), file.profiles())
                .predefinedType("ROOF")
                .addTo(storey);
    }

    @Provide
    Arbitrary<SlopingSlab> slabs() {
        return slabs(3, 1);
    }

    /** With a ridge of a metre at least, and no flatter than a fold that tells two planes apart. */
    @Provide
    Arbitrary<SlopingSlab> halvesOfGables() {
        return slabs(4, 5);
    }

    private static Arbitrary<SlopingSlab> slabs(double leastEave, double leastPitch) {
        Arbitrary<Double> pitches = between(leastPitch, 60).map(Math::toRadians);
        return Combinators.combine(
                        between(leastEave, 80),
                        between(1, 60),
                        between(0, 1.4),
                        between(0, 1.4),
                        pitches,
                        between(0.02, 0.5),
                        between(2, 40))
                .as(SlopingSlab::new);
    }

    private static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(4);
    }

    private static Roof read(String text) throws IOException {
        Path path = Files.createTempFile("slab", ".ifc");
        try {
            Files.writeString(path, text);
            try (StepFile file = StepFile.open(path)) {
                IfcModel model = IfcModel.of(file);
                Tolerances tolerances = Tolerances.standard();
                DropElements elements = DropElements.read(List.of(model), Selection.standard(), tolerances);
                assertThat(elements.unread()).isEmpty();
                return Roofs.layOut(
                        elements.roofs(),
                        elements.members(),
                        new RoofSettings(
                                0.5,
                                SetOut.LEFT,
                                OptionalDouble.empty(),
                                0.6,
                                elements.origin(),
                                model.trueNorth(),
                                tolerances));
            }
        } finally {
            Files.delete(path);
        }
    }
}

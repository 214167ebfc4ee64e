package runtrue.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.RoofForm;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.site.AsNzsSite;
import runtrue.wind.site.AsceSite;
import runtrue.wind.site.EurocodeSite;
import runtrue.wind.site.WindSite;

/** Whatever the plan, the zones of one wind cover each plane once, and so do the places of all winds. */
class ZonesProperties {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static final List<WindSite> SITES = List.of(
            EurocodeSite.recommended(26, "III"),
            new AsceSite(AsceSite.Edition.ASCE_7_22, 47, "C", 1, 0.85, 1, AsceSite.Enclosure.ENCLOSED),
            new AsNzsSite(AsNzsSite.Edition.AS_NZS_2021, 45, OptionalDouble.of(-0.9), 0.2));

    /** Plans with any number of corners, re-entrant ones among them, around a middle. */
    @Provide
    Arbitrary<Polygon> stars() {
        return Arbitraries.doubles()
                .between(4, 40)
                .list()
                .ofMinSize(3)
                .ofMaxSize(12)
                .map(ZonesProperties::star);
    }

    private static Polygon star(List<Double> radii) {
        Coordinate[] ring = new Coordinate[radii.size() + 1];
        for (int i = 0; i < radii.size(); i++) {
            double angle = 2 * Math.PI * i / radii.size();
            ring[i] = new Coordinate(radii.get(i) * Math.cos(angle), radii.get(i) * Math.sin(angle));
        }
        ring[radii.size()] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }

    /** Several right-angled wings side by side, turned by any angle. */
    @Provide
    Arbitrary<Polygon> wings() {
        Arbitrary<List<Double>> depths =
                Arbitraries.doubles().between(3, 40).list().ofMinSize(1).ofMaxSize(5);
        return Combinators.combine(
                        depths,
                        Arbitraries.doubles().between(4, 20),
                        Arbitraries.doubles().between(0, 3))
                .as(ZonesProperties::wings);
    }

    private static Polygon wings(List<Double> depths, double width, double angle) {
        List<Coordinate> ring =
                new ArrayList<>(List.of(new Coordinate(0, 0), new Coordinate(width * depths.size(), 0)));
        for (int i = depths.size() - 1; i >= 0; i--) {
            ring.add(new Coordinate(width * (i + 1), depths.get(i)));
            ring.add(new Coordinate(width * i, depths.get(i)));
        }
        ring.add(ring.get(0).copy());
        Geometry plan = FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
        return (Polygon) AffineTransformation.rotationInstance(angle).transform(plan);
    }

    @Property(tries = 60)
    void zones_of_a_flat_roof_of_any_plan_sum_to_its_area(
            @ForAll("stars") Polygon plan, @ForAll @DoubleRange(min = 3, max = 30) double height) {
        covered(TestRoofs.flat(plan, height, EavesDetail.sharp()));
    }

    @Property(tries = 60)
    void zones_of_a_flat_roof_with_wings_sum_to_its_area(
            @ForAll("wings") Polygon plan, @ForAll @DoubleRange(min = 3, max = 30) double height) {
        covered(TestRoofs.flat(plan, height, EavesDetail.sharp()));
    }

    @Property(tries = 60)
    void zones_of_pitched_planes_of_any_plan_sum_to_their_areas(
            @ForAll("wings") Polygon plan,
            @ForAll @DoubleRange(min = 0, max = 6.28) double fall,
            @ForAll @DoubleRange(min = 5, max = 45) double pitch,
            @ForAll @DoubleRange(min = 3, max = 12) double height) {
        covered(cutInTwo(plan, fall, pitch, height));
    }

    /** A ridge through the middle of a plan, both planes falling away from it. */
    private static WindRoof cutInTwo(Polygon plan, double fall, double pitch, double height) {
        double x = Math.cos(fall);
        double y = Math.sin(fall);
        Coordinate c = plan.getCentroid().getCoordinate();
        double far = 500;
        Polygon half = TestRoofs.polygon(
                c.x - y * far,
                c.y + x * far,
                c.x - y * far + x * far,
                c.y + x * far + y * far,
                c.x + y * far + x * far,
                c.y - x * far + y * far,
                c.x + y * far,
                c.y - x * far);
        Geometry one = OverlayNGRobust.overlay(plan, half, OverlayNG.INTERSECTION);
        Geometry other = OverlayNGRobust.overlay(plan, half, OverlayNG.DIFFERENCE);
        double p = Math.toRadians(pitch);
        return new WindRoof(
                "R",
                plan,
                RoofForm.DUO_PITCH,
                List.of(new WindSlope("A", one, x, y, p), new WindSlope("B", other, -x, -y, p)),
                height,
                height + 2,
                EavesDetail.sharp());
    }

    private static void covered(WindRoof roof) {
        for (WindSite site : SITES) {
            WindResult result = WindPressures.of(site, roof);
            for (WindSlope slope : roof.slopes()) {
                double area = slope.plan().getArea();
                Map<String, Double> byWind = result.zones().stream()
                        .filter(z -> z.zone().slope().equals(slope.id()))
                        .collect(Collectors.groupingBy(
                                z -> z.zone().wind(),
                                Collectors.summingDouble(z -> z.zone().planArea())));
                assertThat(byWind).hasSize(site instanceof EurocodeSite ? 4 : 1);
                assertThat(byWind.values())
                        .as(site.standard())
                        .allSatisfy(sum -> assertThat(sum).isCloseTo(area, within(2e-3)));
                assertThat(result.places().stream()
                                .filter(p -> p.slope().equals(slope.id()))
                                .mapToDouble(WindPlace::planArea)
                                .sum())
                        .as("places, " + site.standard())
                        .isCloseTo(area, within(2e-3));
            }
        }
    }
}

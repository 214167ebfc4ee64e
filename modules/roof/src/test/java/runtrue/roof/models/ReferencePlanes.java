package runtrue.roof.models;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import runtrue.roof.RoofPlane;
import tools.jackson.databind.JsonNode;

/** The planes that the reference gives for one element. */
final class ReferencePlanes {
    private static final double PITCH = 0.2;
    private static final double AZIMUTH = 0.5;
    private static final double LEVEL = 0.01;

    /** A slab has no more upward faces than this; a vault has. */
    private static final int FEW = 10;

    private ReferencePlanes() {}

    /** One plane; degrees, square metres, metres; azimuth NaN when level. */
    record Plane(double pitch, double azimuth, double area, double planArea, double low, double high, double width) {
        boolean isSameSlope(RoofPlane plane) {
            double pitchOff = Math.abs(Math.toDegrees(plane.pitch()) - pitch);
            boolean level = Double.isNaN(azimuth) || plane.azimuth().isEmpty();
            double turn = level
                    ? 0
                    : Math.abs(Math.IEEEremainder(Math.toDegrees(plane.azimuth().orElseThrow()) - azimuth, 360));
            return pitchOff <= PITCH && turn <= AZIMUTH;
        }

        /** Whether a plane lies between the levels that this one reaches between. */
        boolean isWithinLevels(RoofPlane plane) {
            return plane.eaveLevel() >= low - LEVEL && plane.ridgeLevel() <= high + LEVEL;
        }

        /** Whether parts are together as large as this, truly and in plan, to 1 %. */
        boolean isAsLargeAs(List<RoofPlane> parts) {
            double sum = parts.stream().mapToDouble(RoofPlane::area).sum();
            double plan = parts.stream().mapToDouble(RoofPlane::planArea).sum();
            return Math.abs(sum - area) <= 0.01 * area && Math.abs(plan - planArea) <= 0.01 * planArea;
        }

        /** Whether parts together reach from this one's lowest to its highest level, to a centimetre. */
        boolean isAsHighAs(List<RoofPlane> parts) {
            double lowest =
                    parts.stream().mapToDouble(RoofPlane::eaveLevel).min().orElse(Double.NaN);
            double highest =
                    parts.stream().mapToDouble(RoofPlane::ridgeLevel).max().orElse(Double.NaN);
            return Math.abs(lowest - low) <= LEVEL && Math.abs(highest - high) <= LEVEL;
        }

        /** A strip about as wide as the element is thick, at more than 60 degrees to a larger plane of the element. */
        private boolean isCutEdgeOf(Plane main, double thickness) {
            return main.area > area && width <= 1.6 * thickness && cosine(main) < 0.5;
        }

        private double cosine(Plane other) {
            double turn = Double.isNaN(azimuth) || Double.isNaN(other.azimuth) ? 0 : azimuth - other.azimuth;
            double p = Math.toRadians(pitch);
            double q = Math.toRadians(other.pitch);
            return Math.cos(p) * Math.cos(q) + Math.sin(p) * Math.sin(q) * Math.cos(Math.toRadians(turn));
        }
    }

    /** Those that nothing of the same element lies over, without the cut edges of a thick slab. */
    static List<Plane> outer(JsonNode element) {
        List<Plane> planes = element.has("suspect") ? List.of() : uncovered(element);
        double area = planes.stream().mapToDouble(Plane::area).sum();
        double thickness = element.path("volumeM3").asDouble(0) / area;
        return planes.stream()
                .filter(p -> planes.stream().noneMatch(main -> p.isCutEdgeOf(main, thickness)))
                .toList();
    }

    /** Of all outer planes together in plan; the facets of a vault in one body may be as narrow as cut edges. */
    static double planArea(JsonNode element) {
        List<Plane> planes = element.get("planes").size() > FEW ? uncovered(element) : outer(element);
        return planes.stream().mapToDouble(Plane::planArea).sum();
    }

    private static List<Plane> uncovered(JsonNode element) {
        List<Plane> planes = new ArrayList<>();
        for (JsonNode plane : element.path("planes")) {
            if (plane.get("coveredFraction").asDouble() == 0) {
                planes.add(of(plane));
            }
        }
        return planes;
    }

    private static Plane of(JsonNode plane) {
        boolean level = !plane.path("azimuthDeg").isNumber();
        double area = plane.get("areaM2").asDouble();
        double width = level
                ? Math.min(plane.get("extentX").asDouble(), plane.get("extentY").asDouble())
                : Math.min(
                        plane.get("alongFallM").asDouble(),
                        area / plane.get("alongFallM").asDouble());
        return new Plane(
                plane.get("pitchDeg").asDouble(),
                level ? Double.NaN : plane.get("azimuthDeg").asDouble(),
                area,
                plane.get("planAreaM2").asDouble(),
                plane.get("minZ").asDouble(),
                plane.get("maxZ").asDouble(),
                width);
    }

    static String text(RoofPlane p) {
        return String.format(
                Locale.ROOT,
                "\n          %.2f deg to %.2f, %.4f m2, plan %.4f, z %.3f to %.3f, %d elements",
                Math.toDegrees(p.pitch()),
                p.azimuth().isPresent() ? Math.toDegrees(p.azimuth().getAsDouble()) : Double.NaN,
                p.area(),
                p.planArea(),
                p.eaveLevel(),
                p.ridgeLevel(),
                p.elements().size());
    }
}

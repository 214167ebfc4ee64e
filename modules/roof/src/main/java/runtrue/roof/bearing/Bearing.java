package runtrue.roof.bearing;

import java.util.List;
import java.util.Optional;

/**
 * What a plane's sheets rest on, and how true it lies.
 *
 * @param truePlane of the supports across the fall; empty when there are none
 * @param near every member near the plane that is no support, and everything else that stands above the contact plane,
 *     highest first
 * @param faults where support lines are not what they are elsewhere on the plane
 */
public record Bearing(BearingKind kind, Optional<TruePlane> truePlane, List<NearThing> near, List<LineFault> faults) {
    public Bearing {
        near = List.copyOf(near);
        faults = List.copyOf(faults);
    }

    /** Of a plane about which nothing is known. */
    public static Bearing unknown() {
        return new Bearing(BearingKind.UNKNOWN, Optional.empty(), List.of(), List.of());
    }

    /** What sheets cannot be laid over. */
    public List<NearThing> proud() {
        return near.stream().filter(n -> n.standing() == Standing.PROUD).toList();
    }
}

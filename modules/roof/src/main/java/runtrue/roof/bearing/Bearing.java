package runtrue.roof.bearing;

import java.util.List;
import java.util.Optional;
import runtrue.ifc.Element;

/**
 * What a plane's sheets rest on, and how true it lies.
 *
 * @param truePlane of the supports across the fall; empty when there are none
 * @param near every member near the plane that is no support, and everything else that stands above the contact plane,
 *     highest first
 * @param unread things that may reach to the contact plane, but whose bodies could not be read
 * @param faults where support lines are not what they are elsewhere on the plane
 */
public record Bearing(
        BearingKind kind,
        Optional<TruePlane> truePlane,
        List<NearThing> near,
        List<Element> unread,
        List<LineFault> faults) {
    public Bearing {
        near = List.copyOf(near);
        unread = List.copyOf(unread);
        faults = List.copyOf(faults);
    }

    /** Of a plane about which nothing is known. */
    public static Bearing unknown() {
        return new Bearing(BearingKind.UNKNOWN, Optional.empty(), List.of(), List.of(), List.of());
    }

    /** What sheets cannot be laid over, be it a bolt head or a plate that passes right through them. */
    public List<NearThing> proud() {
        return near.stream()
                .filter(n -> n.standing() == Standing.PROUD || n.standing() == Standing.THROUGH)
                .toList();
    }
}

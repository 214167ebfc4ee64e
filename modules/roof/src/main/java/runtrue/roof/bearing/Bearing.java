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
 * @param unreadSupports possible supports that may lie under the plane, but whose bodies could not be read
 * @param faults where support lines are not what they are elsewhere on the plane
 */
public record Bearing(
        BearingKind kind,
        Optional<TruePlane> truePlane,
        List<NearThing> near,
        List<Element> unread,
        List<Element> unreadSupports,
        List<LineFault> faults) {
    public Bearing {
        near = List.copyOf(near);
        unread = List.copyOf(unread);
        unreadSupports = List.copyOf(unreadSupports);
        faults = List.copyOf(faults);
    }

    /** Of a plane about which nothing is known. */
    public static Bearing unknown() {
        return untrue(BearingKind.UNKNOWN, List.of(), List.of(), List.of());
    }

    /** Of a plane whose supports, if it has any, are not measured against a contact plane. */
    public static Bearing untrue(
            BearingKind kind, List<NearThing> near, List<Element> unreadSupports, List<LineFault> faults) {
        return new Bearing(kind, Optional.empty(), near, List.of(), unreadSupports, faults);
    }

    /** What sheets cannot be laid over, be it a bolt head or a plate that passes right through them. */
    public List<NearThing> proud() {
        return near.stream()
                .filter(n -> n.standing() == Standing.PROUD || n.standing() == Standing.THROUGH)
                .toList();
    }
}

package runtrue.rules.wind;

import java.util.Arrays;
import runtrue.roof.ZoneKind;

/**
 * Where the zones of the standards lie, for tables and build-ups that know corner, edge and interior only. By name rather
 * than by suction, so that a zone does not change its place with the pitch.
 */
final class Places {
    private Places() {}

    static boolean isPlace(String name) {
        return Arrays.stream(ZoneKind.values()).anyMatch(k -> k.label().equals(name));
    }

    /** Of a zone as named by EN 1991-1-4, ASCE 7, AS/NZS 1170.2 or by its place. */
    static ZoneKind of(String name) {
        if (isPlace(name)) {
            return Arrays.stream(ZoneKind.values())
                    .filter(k -> k.label().equals(name))
                    .findFirst()
                    .orElseThrow();
        } else if (name.startsWith("F") || name.startsWith("3") || name.equals("RC1")) {
            return ZoneKind.CORNER;
        } else if (name.matches("[GJKLM]|2.*|RA[1-4]")) {
            return ZoneKind.EDGE;
        }
        return ZoneKind.INTERIOR;
    }
}

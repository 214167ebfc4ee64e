package runtrue.rules.wind;

import runtrue.roof.Zone;

/**
 * One zone of a plane and what the wind does there.
 *
 * @param zone where it lies; its kind is the place, whatever a standard calls it
 * @param name as the standard or the engineer names it, for example {@code F} or {@code corner}
 */
public record PlaneZone(Zone zone, String name, ZoneUplift uplift) {}

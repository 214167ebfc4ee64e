package runtrue.shape.curve;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A place on the way along a chain.
 *
 * @param before unit direction of arrival; where the way starts, that of departure
 * @param after unit direction of departure; other than that of arrival at a corner
 */
public record Station(Vector3D point, Vector3D before, Vector3D after) {}

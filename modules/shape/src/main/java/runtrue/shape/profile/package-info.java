/**
 * Profiles as rings of straight edges in their own plane, in file units. Start with
 * {@link runtrue.shape.profile.ProfileReader#read}.
 */
@NullMarked
package runtrue.shape.profile;

import org.jspecify.annotations.NullMarked;

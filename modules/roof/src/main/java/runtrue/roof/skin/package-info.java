/**
 * Which faces of a body are roof: the upper skin, without cut edges and hidden layers. Start with {@link
 * runtrue.roof.skin.SkinReader}.
 */
@NullMarked
package runtrue.roof.skin;

import org.jspecify.annotations.NullMarked;

/** Tests of the second engine. Start with {@link runtrue.geometryserver.RealModelsTest}. */
@NullMarked
package runtrue.geometryserver;

import org.jspecify.annotations.NullMarked;

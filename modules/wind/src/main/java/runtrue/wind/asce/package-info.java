/** Components and cladding of ASCE 7. Start with {@link runtrue.wind.asce.AscePressures}. */
@NullMarked
package runtrue.wind.asce;

import org.jspecify.annotations.NullMarked;

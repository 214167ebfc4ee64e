/** Local pressure zones of AS/NZS 1170.2. Start with {@link runtrue.wind.asnzs.AsNzsPressures}. */
@NullMarked
package runtrue.wind.asnzs;

import org.jspecify.annotations.NullMarked;

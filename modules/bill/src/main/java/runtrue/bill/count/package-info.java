/**
 * A roof taken apart into what items are counted on (sheets, ribs on supports, edges and so on), each with its facts: start
 * with {@link runtrue.bill.count.RoofSubjects}.
 */
@NullMarked
package runtrue.bill.count;

import org.jspecify.annotations.NullMarked;

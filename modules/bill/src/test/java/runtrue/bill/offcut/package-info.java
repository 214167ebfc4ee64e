@NullMarked
package runtrue.bill.offcut;

import org.jspecify.annotations.NullMarked;

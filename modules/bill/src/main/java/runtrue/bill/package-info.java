@NullMarked
package runtrue.bill;

import org.jspecify.annotations.NullMarked;

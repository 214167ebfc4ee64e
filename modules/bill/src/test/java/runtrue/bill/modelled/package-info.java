@NullMarked
package runtrue.bill.modelled;

import org.jspecify.annotations.NullMarked;

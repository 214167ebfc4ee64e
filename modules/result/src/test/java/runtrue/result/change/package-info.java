@NullMarked
package runtrue.result.change;

import org.jspecify.annotations.NullMarked;

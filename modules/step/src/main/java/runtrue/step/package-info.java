@NullMarked
package runtrue.step;

import org.jspecify.annotations.NullMarked;

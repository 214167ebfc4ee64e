@NullMarked
package runtrue.samples;

import org.jspecify.annotations.NullMarked;

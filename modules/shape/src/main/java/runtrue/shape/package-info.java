@NullMarked
package runtrue.shape;

import org.jspecify.annotations.NullMarked;

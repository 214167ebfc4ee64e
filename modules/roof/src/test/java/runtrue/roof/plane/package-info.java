@NullMarked
package runtrue.roof.plane;

import org.jspecify.annotations.NullMarked;

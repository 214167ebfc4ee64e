@NullMarked
package runtrue.roof;

import org.jspecify.annotations.NullMarked;

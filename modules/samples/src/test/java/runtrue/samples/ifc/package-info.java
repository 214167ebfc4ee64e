@NullMarked
package runtrue.samples.ifc;

import org.jspecify.annotations.NullMarked;

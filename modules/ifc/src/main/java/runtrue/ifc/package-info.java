@NullMarked
package runtrue.ifc;

import org.jspecify.annotations.NullMarked;

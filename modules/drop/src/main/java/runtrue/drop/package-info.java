@NullMarked
package runtrue.drop;

import org.jspecify.annotations.NullMarked;

@NullMarked
package runtrue.result;

import org.jspecify.annotations.NullMarked;

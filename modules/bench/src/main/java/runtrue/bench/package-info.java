@NullMarked
package runtrue.bench;

import org.jspecify.annotations.NullMarked;

@NullMarked
package runtrue.result.build;

import org.jspecify.annotations.NullMarked;

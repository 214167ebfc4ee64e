@NullMarked
package runtrue.cli;

import org.jspecify.annotations.NullMarked;

@NullMarked
package runtrue.rules;

import org.jspecify.annotations.NullMarked;

/** Tests of the STEP reader through its public door. */
@NullMarked
package runtrue.step;

import org.jspecify.annotations.NullMarked;

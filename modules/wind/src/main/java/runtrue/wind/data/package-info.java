/** Reads the tables of coefficients that come with the program or from a user. Start with {@link runtrue.wind.data.DataFile}. */
@NullMarked
package runtrue.wind.data;

import org.jspecify.annotations.NullMarked;

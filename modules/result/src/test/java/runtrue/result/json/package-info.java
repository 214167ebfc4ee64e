@NullMarked
package runtrue.result.json;

import org.jspecify.annotations.NullMarked;

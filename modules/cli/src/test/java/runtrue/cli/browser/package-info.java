@NullMarked
package runtrue.cli.browser;

import org.jspecify.annotations.NullMarked;

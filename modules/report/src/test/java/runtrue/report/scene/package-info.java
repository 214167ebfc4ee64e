@NullMarked
package runtrue.report.scene;

import org.jspecify.annotations.NullMarked;

/**
 * How a model is read from an indexed STEP file: start with {@link runtrue.ifc.internal.StepModel}. Other modules use
 * {@link runtrue.ifc.IfcModel} and nothing in here.
 */
@NullMarked
package runtrue.ifc.internal;

import org.jspecify.annotations.NullMarked;

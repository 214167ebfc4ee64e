/**
 * IFC models by their schema's names: start with {@link runtrue.ifc.IfcModel#of}. Which elements of a model matter is
 * decided in {@link runtrue.ifc.select.ElementFinder}.
 */
@NullMarked
package runtrue.ifc;

import org.jspecify.annotations.NullMarked;

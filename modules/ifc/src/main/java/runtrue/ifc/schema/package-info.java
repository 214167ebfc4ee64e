/**
 * Names of entities and attributes for each IFC schema. Start with {@link runtrue.ifc.schema.Schema#of}; the tables
 * behind it are written at build time by {@link runtrue.ifc.schema.SchemaTables} from the standard's EXPRESS files.
 */
@NullMarked
package runtrue.ifc.schema;

import org.jspecify.annotations.NullMarked;

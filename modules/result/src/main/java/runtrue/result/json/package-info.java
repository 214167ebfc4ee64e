/**
 * The result as a JSON file that the schema {@code runtrue/result/result.schema.json} describes. Start with
 * {@link runtrue.result.json.ResultJson}.
 */
@NullMarked
package runtrue.result.json;

import org.jspecify.annotations.NullMarked;

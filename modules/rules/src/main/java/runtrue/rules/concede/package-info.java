/**
 * Non-conformances that a named person has accepted: {@link runtrue.rules.concede.Concessions} reads them and applies
 * them to judgements. A concession that does not hold is never dropped in silence; its finding comes back.
 */
@NullMarked
package runtrue.rules.concede;

import org.jspecify.annotations.NullMarked;

/** The roof as wind sees it: its planes in plan, its form. Start with {@link runtrue.wind.form.WindRoof}. */
@NullMarked
package runtrue.wind.form;

import org.jspecify.annotations.NullMarked;

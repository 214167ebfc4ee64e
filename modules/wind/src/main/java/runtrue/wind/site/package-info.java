/** What each standard has to know of a site. Start with {@link runtrue.wind.site.WindSite}. */
@NullMarked
package runtrue.wind.site;

import org.jspecify.annotations.NullMarked;

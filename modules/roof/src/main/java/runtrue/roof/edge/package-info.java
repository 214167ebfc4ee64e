/** Where planes end and how they meet. Start with {@link runtrue.roof.edge.EdgeFinder}. */
@NullMarked
package runtrue.roof.edge;

import org.jspecify.annotations.NullMarked;

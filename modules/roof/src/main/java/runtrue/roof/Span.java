package runtrue.roof;

/**
 * A length of sheet between two supports, or past the first or last, over a part of the plane's width.
 *
 * @param length greatest within {@code u}, metres along the fall
 * @param least least within {@code u}
 * @param u extent across the fall
 * @param v extent along the fall where it is longest
 * @param lower id of the support line below, empty for an eave overhang
 * @param upper id of the support line above, empty for a ridge overhang
 */
public record Span(SpanKind kind, double length, double least, Interval u, Interval v, String lower, String upper) {}

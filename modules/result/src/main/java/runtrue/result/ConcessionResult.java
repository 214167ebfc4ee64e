package runtrue.result;

/**
 * What became of a concession: a non-conformance that a named person accepts.
 *
 * @param finding id of the finding it is for
 * @param state {@code holds}, or what stands against it: {@code expired}, {@code exceeded}, {@code unclear},
 *     {@code not assessed}, {@code cured}, {@code unknown}
 * @param by who accepts
 * @param until last day on which it holds as {@code 2027-03-31}; empty when until withdrawn
 * @param upTo worst value accepted, as written; empty when none is stated
 * @param remark one sentence for people
 * @param from file and line it stands in
 */
public record ConcessionResult(
        String finding, String state, String by, String why, String until, String upTo, String remark, String from) {}

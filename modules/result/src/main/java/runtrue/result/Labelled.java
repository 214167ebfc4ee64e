package runtrue.result;

/** A word of the format, written as its label. */
public interface Labelled {
    String label();
}

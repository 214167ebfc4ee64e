package runtrue.rules.cel;

/** What an expression sees of a fact. */
public enum FactType {
    /** In SI, as double. */
    NUMBER,
    TEXT,
    TRUTH
}

package runtrue.roof;

/** Where the first full sheet starts, looking up the fall. */
public enum SetOut {
    LEFT,
    RIGHT,
    /** Both outer strips trimmed alike. */
    CENTRED
}

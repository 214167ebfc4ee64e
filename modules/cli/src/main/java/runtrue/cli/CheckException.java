package runtrue.cli;

/**
 * What a person gave cannot be checked. The message says what is wrong, where and what to do, and is all that is
 * printed.
 */
final class CheckException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean stopsBatch;

    private CheckException(String message, Throwable cause, boolean stopsBatch) {
        super(message, cause);
        this.stopsBatch = stopsBatch;
    }

    /** A rule set, system or setting is wrong: no drop can be checked with it. */
    static CheckException ofOptions(String message, Throwable cause) {
        return new CheckException(message, cause, true);
    }

    /** One drop cannot be read; the others go on. */
    static CheckException ofDrop(String message, Throwable cause) {
        return new CheckException(message, cause, false);
    }

    boolean stopsBatch() {
        return stopsBatch;
    }
}

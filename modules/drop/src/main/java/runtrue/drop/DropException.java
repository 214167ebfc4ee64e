package runtrue.drop;

/**
 * Paths that hold no drop, or a model file that cannot be opened. The message says what is wrong, where and what to
 * do; it is meant for a person and holds no class names.
 */
public final class DropException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public DropException(String message) {
        super(message);
    }

    public DropException(String message, Throwable cause) {
        super(message, cause);
    }
}

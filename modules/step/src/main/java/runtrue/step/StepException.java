package runtrue.step;

/**
 * A STEP file, or one record of it, that cannot be read. The message says what is wrong, where (file, line or #id) and
 * what to do; it is meant for a person and holds no class names.
 */
public final class StepException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public StepException(String message) {
        super(message);
    }

    public StepException(String message, Throwable cause) {
        super(message, cause);
    }
}

package runtrue.wind;

/** Input that no wind pressure can be worked out from; the message says what, where and what to do. */
public final class WindException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public WindException(String message) {
        super(message);
    }

    public WindException(String message, Throwable cause) {
        super(message, cause);
    }
}

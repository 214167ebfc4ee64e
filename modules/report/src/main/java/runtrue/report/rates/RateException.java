package runtrue.report.rates;

/** A rate file that cannot be used: the message has the file, the line where one is at fault, and what to do. */
public final class RateException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    RateException(String message) {
        super(message);
    }

    RateException(String message, Throwable cause) {
        super(message, cause);
    }
}

package runtrue.rules;

/** A rule set, roof system or settings file that cannot be used. The message has one line per error: file, line, what, what to do. */
public final class RuleException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public RuleException(String message) {
        super(message);
    }

    public RuleException(String message, Throwable cause) {
        super(message, cause);
    }
}

package runtrue.cli;

/** Results that cannot be written. The message names the file or folder, the reason and what to do. */
final class OutputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    OutputException(String message, Throwable cause) {
        super(message, cause);
    }
}

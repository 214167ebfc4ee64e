package runtrue.geometryserver;

/** The program, or one run of it, that failed. Stays inside this module; the message is a clause that follows its name. */
final class ProgramException extends Exception {
    private static final long serialVersionUID = 1L;

    ProgramException(String message) {
        super(message);
    }

    ProgramException(String message, Throwable cause) {
        super(message, cause);
    }

    String clause() {
        return String.valueOf(getMessage());
    }
}

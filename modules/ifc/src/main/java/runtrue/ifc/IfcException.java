package runtrue.ifc;

/** A model, or one entity of it, that does not say what is needed. The message says what, where (file, #id) and what to do. */
public final class IfcException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public IfcException(String message) {
        super(message);
    }

    public IfcException(String message, Throwable cause) {
        super(message, cause);
    }
}

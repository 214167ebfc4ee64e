package runtrue.shape;

/**
 * Geometry that the model does not state well enough to build. Stays inside this module: {@link ShapeReader} turns it
 * into {@link Shape.Unread}. The message is a sentence for a coordinator and names the entity where one is known.
 */
public final class ShapeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public ShapeException(String message) {
        super(message);
    }
}

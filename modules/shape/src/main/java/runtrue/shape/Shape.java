package runtrue.shape;

import java.util.List;
import java.util.Optional;

/**
 * What an element's representation gave: {@link Body}, or {@link Unread} with the reason. Never silently nothing.
 * Metres, world axes, moved by the origin that the reader was given.
 */
public sealed interface Shape {
    /** Name of this module's own reader as an engine. */
    String BUILT_IN = "built-in reader";

    /**
     * A body that was read.
     *
     * @param faces of all items together, openings subtracted
     * @param closed whether every edge of the faces is shared by two of them
     * @param sweep where the whole body is one straight extrusion (openings and clippings aside)
     * @param representation for example {@code Body/SweptSolid: IfcExtrudedAreaSolid}
     * @param remarks what was done that a person should know, for example an opening that could not be read
     * @param engine who read it: {@link #BUILT_IN}, or the name and version of another engine
     * @param assumed whether the model draws no body, and this one was made of its material usage and a curve; the remarks
     *     say how
     */
    record Body(
            List<Face> faces,
            boolean closed,
            Optional<Sweep> sweep,
            String representation,
            List<String> remarks,
            String engine,
            boolean assumed)
            implements Shape {
        public Body {
            faces = List.copyOf(faces);
            remarks = List.copyOf(remarks);
        }

        /** One of the built-in reader. */
        public Body(
                List<Face> faces, boolean closed, Optional<Sweep> sweep, String representation, List<String> remarks) {
            this(faces, closed, sweep, representation, remarks, BUILT_IN, false);
        }

        public boolean builtIn() {
            return engine.equals(BUILT_IN);
        }
    }

    /**
     * A body that was not read.
     *
     * @param reason one sentence that a coordinator can act on
     * @param representation as above, empty when the element has none
     */
    record Unread(String reason, String representation) implements Shape {}
}

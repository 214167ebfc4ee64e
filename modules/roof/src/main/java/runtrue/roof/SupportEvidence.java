package runtrue.roof;

/** How a support was recognised. */
public enum SupportEvidence {
    /** The model types it as purlin, batten or rafter. */
    TYPED,
    /** A property or classification that the project's settings name says so. */
    STATED,
    /** Its name says so. */
    NAMED,
    /** It lies where a support must lie, across the fall within the build-up depth. */
    POSITION
}

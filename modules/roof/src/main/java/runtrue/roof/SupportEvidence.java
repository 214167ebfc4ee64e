package runtrue.roof;

/** How a support was recognised. */
public enum SupportEvidence {
    /** The model types it as purlin, batten or rafter. */
    TYPED,
    /** Its name says so. */
    NAMED,
    /** It lies where a support must lie, across the fall within the build-up depth. */
    POSITION
}

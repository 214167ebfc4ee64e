package runtrue.cli;

/** Told how far a check has come. All methods may be called from any thread and return at once. */
interface Progress {
    /** A stage begins; {@code total} is the number of steps to come, 0 when it is not known. */
    void stage(Stage stage, long total);

    /** That many more steps of the present stage are done. */
    void advance(long steps);

    /** Told, and tells nobody. */
    Progress NONE = new Progress() {
        @Override
        public void stage(Stage stage, long total) {}

        @Override
        public void advance(long steps) {}
    };
}

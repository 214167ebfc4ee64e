package runtrue.report.bcf;

/** Versions of the format that can be written. */
public enum BcfVersion {
    V2_1("2.1"),
    V3_0("3.0");

    private final String number;

    BcfVersion(String number) {
        this.number = number;
    }

    /** As the format's own version file states it. */
    @Override
    public String toString() {
        return number;
    }
}

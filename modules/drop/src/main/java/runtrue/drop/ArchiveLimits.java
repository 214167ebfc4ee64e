package runtrue.drop;

/**
 * Bounds on what an archive may unpack to, so that a damaged or hostile one cannot fill disc or memory. Bytes are
 * counted as they are unpacked; the sizes an archive states are not trusted.
 *
 * @param entries most entries of any kind; default 1000
 * @param totalBytes most bytes unpacked from one archive; default 16 GiB
 * @param ratio most unpacked bytes for one packed byte of a model; default 200. STEP text packs 5 to 30 to 1; the
 *     format itself ends near 1030 to 1.
 * @param memoryBytes models up to this size are kept in memory, larger ones go to a temporary file; default 64 MiB
 */
public record ArchiveLimits(int entries, long totalBytes, int ratio, int memoryBytes) {
    public static final ArchiveLimits DEFAULT = new ArchiveLimits(1000, 16L << 30, 200, 64 << 20);

    public ArchiveLimits {
        if (entries < 1 || totalBytes < 1 || ratio < 1 || memoryBytes < 0) {
            throw new IllegalArgumentException("limits must be positive: " + entries + " entries, " + totalBytes
                    + " bytes, ratio " + ratio + ", " + memoryBytes + " bytes in memory");
        }
    }
}

package runtrue.step.internal;

import org.jspecify.annotations.Nullable;

/** Scans one segment of a file beside the others. */
final class SegmentThread extends Thread {
    private final SegmentScan segment;
    private @Nullable RuntimeException failure;
    private @Nullable Error error;

    private SegmentThread(SegmentScan segment) {
        super("step-index");
        this.segment = segment;
        setDaemon(true);
    }

    static SegmentThread start(SegmentScan segment) {
        SegmentThread thread = new SegmentThread(segment);
        thread.start();
        return thread;
    }

    @Override
    public void run() {
        try {
            segment.run();
        } catch (RuntimeException e) {
            failure = e;
        } catch (Error e) {
            error = e;
        }
    }

    /** Waits for the end and throws what the scan threw. */
    void finish() {
        await();
        if (error != null) {
            throw error;
        }
        if (failure != null) {
            throw failure;
        }
    }

    /** Waits, whatever the outcome: the file may be closed only when no thread reads it. */
    void await() {
        boolean interrupted = false;
        while (isAlive()) {
            try {
                join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}

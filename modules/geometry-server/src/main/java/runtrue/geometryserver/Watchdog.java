package runtrue.geometryserver;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;

/**
 * Ends the program when it is silent for too long. The binding hides its process, so what it starts is told by being a
 * child of this process that was not there before; only one program runs at a time.
 */
final class Watchdog implements AutoCloseable {
    private static final Duration TO_END = Duration.ofSeconds(2);

    private final Set<Long> others;
    private final long end;
    private final Thread thread;
    private long bite;
    private boolean bitten;
    private boolean closed;

    /**
     * Starts watching; to be made before the program is started.
     *
     * @param total from now on, however often it is heard
     */
    Watchdog(Duration first, Duration total) {
        others = ProcessHandle.current().children().map(ProcessHandle::pid).collect(Collectors.toSet());
        end = System.nanoTime() + total.toNanos();
        heard(first);
        thread = new Thread(this::watch, "geometry-watchdog");
        thread.setDaemon(true);
        thread.start();
    }

    /** The program was heard; it has that long until it must be heard again. */
    synchronized void heard(Duration silence) {
        bite = Math.min(System.nanoTime() + silence.toNanos() - end, 0) + end;
        notifyAll();
    }

    private synchronized void watch() {
        try {
            while (!closed) {
                long left = bite - System.nanoTime();
                if (left <= 0) {
                    bitten = true;
                    kill();
                    return;
                }
                wait(left / 1_000_000 + 1);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether it had to end the program. */
    synchronized boolean hasBitten() {
        return bitten;
    }

    private List<ProcessHandle> children() {
        return ProcessHandle.current()
                .children()
                .filter(child -> !others.contains(child.pid()))
                .toList();
    }

    private List<ProcessHandle> kill() {
        List<ProcessHandle> ended = new ArrayList<>();
        for (ProcessHandle child : children()) {
            List<ProcessHandle> all = child.descendants().toList();
            child.destroyForcibly();
            all.forEach(ProcessHandle::destroyForcibly);
            ended.add(child);
        }
        return ended;
    }

    /** A file that still runs cannot be deleted everywhere, so what was ended is waited for, briefly. */
    private static void await(ProcessHandle ended) {
        try {
            ended.onExit().get(TO_END.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            // It was told to end; the operating system takes its time, and nobody waits for its answer.
            return;
        }
    }

    /** Stops watching, and ends what is still running. */
    @Override
    public synchronized void close() {
        closed = true;
        kill().forEach(Watchdog::await);
        notifyAll();
    }
}

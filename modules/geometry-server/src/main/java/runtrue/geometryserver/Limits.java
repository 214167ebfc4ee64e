package runtrue.geometryserver;

import java.time.Duration;

/**
 * Bounds of the program's time and memory.
 *
 * @param start longest wait for its greeting
 * @param silence longest wait for one element; real ones take hundredths of a second, and it can hang for ever
 * @param total longest time for the elements of one model, restarts included
 * @param restarts how often it is started again for one model after it failed
 * @param memoryMegabytes of address space; held by the shell that starts it, so not on Windows, and macOS may ignore it
 * @param fileBytes largest file that it is given; more elements than fit go in several
 */
record Limits(Duration start, Duration silence, Duration total, int restarts, int memoryMegabytes, int fileBytes) {
    static Limits standard() {
        return new Limits(
                Duration.ofSeconds(15), Duration.ofSeconds(30), Duration.ofMinutes(5), 8, 3072, 32 * 1024 * 1024);
    }
}

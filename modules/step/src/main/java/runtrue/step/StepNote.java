package runtrue.step;

/**
 * Something in a file that was passed over or repaired while reading.
 *
 * @param line 1-based line, 0 when unknown
 * @param id instance number, 0 when none
 */
public record StepNote(String message, int line, int id) {}

package runtrue.rules.judge;

/** A subject and what one rule says of it. */
record Judged(Subject subject, Verdict verdict) {}

package runtrue.rules.judge;

import runtrue.rules.judge.subject.Subject;

/** A subject and what one rule says of it. */
record Judged(Subject subject, Verdict verdict) {}

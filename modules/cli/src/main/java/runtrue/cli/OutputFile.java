package runtrue.cli;

import java.io.IOException;
import java.io.OutputStream;

/** A file to be written into a drop's output folder: a plain file name and what writes it. */
record OutputFile(String name, Content content) {
    OutputFile {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
            throw new IllegalArgumentException("not a plain file name: " + name);
        }
    }

    /** Writes once to a buffered stream that it leaves open. Files of one drop may be written at the same time. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }
}

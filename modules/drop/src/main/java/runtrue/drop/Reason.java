package runtrue.drop;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Says in plain words why the file system refused; the exceptions' own messages are often just the path again. */
final class Reason {
    private Reason() {}

    static String of(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        if (e instanceof NoSuchFileException) {
            return "no such file";
        }
        String message = e.getMessage();
        return message == null ? "the disc or network failed" : message;
    }
}

package runtrue.drop;

import java.nio.file.Path;

/** A model ready to be indexed: a file to be mapped, or bytes. The name is for messages and results. */
public sealed interface ModelSource {
    String name();

    /** A file that can be mapped; one that was unpacked goes when its {@link OpenedModels} are closed. */
    record OnDisk(String name, Path path) implements ModelSource {}

    /** A small entry of an archive. The bytes are not copied; nobody may change them. */
    @SuppressWarnings("ArrayRecordComponent") // never compared; a copy of up to 64 MiB would be waste
    record InMemory(String name, byte[] content) implements ModelSource {}
}

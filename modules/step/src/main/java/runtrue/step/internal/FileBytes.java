package runtrue.step.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import runtrue.step.StepException;

/** The bytes of one file, on disk or in memory, handed out in pieces. Safe for use by many threads. */
final class FileBytes implements AutoCloseable {
    private final String name;
    private final long size;
    private final @Nullable FileChannel channel;
    private final byte[] content;
    private final List<MappedByteBuffer> maps = new ArrayList<>();

    private FileBytes(String name, long size, @Nullable FileChannel channel, byte[] content) {
        this.name = name;
        this.size = size;
        this.channel = channel;
        this.content = content;
    }

    static FileBytes of(String name, byte[] content) {
        return new FileBytes(name, content.length, null, content);
    }

    static FileBytes open(Path path) {
        Path last = path.getFileName();
        String name = last == null ? path.toString() : last.toString();
        try {
            FileChannel channel = FileChannel.open(path);
            try {
                return new FileBytes(name, channel.size(), channel, new byte[0]);
            } catch (IOException e) {
                channel.close();
                throw e;
            }
        } catch (NoSuchFileException e) {
            throw new StepException(path + ": there is no such file", e);
        } catch (IOException e) {
            throw new StepException(path + ": cannot be opened (" + e.getMessage() + ")", e);
        }
    }

    String name() {
        return name;
    }

    long size() {
        return size;
    }

    /** A piece of the given place and length, mapped if the file is on disk. */
    Piece piece(long start, int length) {
        FileChannel from = channel;
        if (from == null) {
            ByteBuffer slice = ByteBuffer.wrap(content).slice((int) start, length);
            return new Piece(slice.order(ByteOrder.LITTLE_ENDIAN), start);
        }
        try {
            MappedByteBuffer map = from.map(MapMode.READ_ONLY, start, length);
            map.order(ByteOrder.LITTLE_ENDIAN);
            synchronized (maps) {
                maps.add(map);
            }
            return new Piece(map, start);
        } catch (IOException e) {
            throw new StepException(name + ": cannot be mapped into memory (" + e.getMessage() + ")", e);
        }
    }

    /** Copies up to {@code target.length} bytes from a place of the file; answers how many there were. */
    int read(long start, byte[] target) {
        int length = (int) Math.max(0, Math.min(target.length, size - start));
        FileChannel from = channel;
        if (from == null) {
            System.arraycopy(content, (int) start, target, 0, length);
            return length;
        }
        try {
            ByteBuffer buffer = ByteBuffer.wrap(target, 0, length);
            while (buffer.hasRemaining()) {
                if (from.read(buffer, start + buffer.position()) < 0) {
                    return buffer.position();
                }
            }
            return length;
        } catch (IOException e) {
            throw new StepException(name + ": cannot be read (" + e.getMessage() + ")", e);
        }
    }

    /** Gives the file back. No piece may be read from now on: its memory is gone. */
    @Override
    public void close() {
        synchronized (maps) {
            for (MappedByteBuffer map : maps) {
                Unmapping.unmap(map);
            }
            maps.clear();
        }
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

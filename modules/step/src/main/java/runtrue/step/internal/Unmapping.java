package runtrue.step.internal;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;

/**
 * Gives a map back at once. Java 17 has no supported call for it and would keep the file open, on some systems locked,
 * until the buffer is collected. Where the running JDK does not offer this call, the collector does it later.
 */
final class Unmapping {
    private Unmapping() {}

    static void unmap(MappedByteBuffer map) {
        try {
            Class<?> type = Class.forName("sun.misc.Unsafe");
            Field instance = type.getDeclaredField("theUnsafe");
            instance.setAccessible(true);
            Method invokeCleaner = type.getMethod("invokeCleaner", ByteBuffer.class);
            invokeCleaner.invoke(instance.get(null), map);
        } catch (ClassNotFoundException | NoSuchFieldException | NoSuchMethodException e) {
            return;
        } catch (ReflectiveOperationException | RuntimeException e) {
            throw new IllegalStateException("a mapped file could not be given back", e);
        }
    }
}

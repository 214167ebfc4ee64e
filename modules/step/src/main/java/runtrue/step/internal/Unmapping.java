package runtrue.step.internal;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Field;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import org.jspecify.annotations.Nullable;

/**
 * Gives a map back at once. Java 17 has no supported call for it and would keep the file open, on some systems locked,
 * until the buffer is collected. Where the running JDK does not offer the call either, the collector does it later.
 */
final class Unmapping {
    private static final @Nullable MethodHandle INVOKE_CLEANER = invokeCleaner();

    private Unmapping() {}

    static void unmap(MappedByteBuffer map) {
        if (INVOKE_CLEANER != null) {
            try {
                INVOKE_CLEANER.invoke((ByteBuffer) map);
            } catch (Throwable e) {
                throw new IllegalStateException("a mapped file could not be given back", e);
            }
        }
    }

    private static @Nullable MethodHandle invokeCleaner() {
        try {
            Class<?> type = Class.forName("sun.misc.Unsafe");
            Field instance = type.getDeclaredField("theUnsafe");
            instance.setAccessible(true);
            return MethodHandles.lookup()
                    .findVirtual(type, "invokeCleaner", MethodType.methodType(void.class, ByteBuffer.class))
                    .bindTo(instance.get(null));
        } catch (ReflectiveOperationException | RuntimeException e) {
            return null;
        }
    }
}

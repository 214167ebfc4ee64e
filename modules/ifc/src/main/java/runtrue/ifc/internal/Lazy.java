package runtrue.ifc.internal;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value made once, when first asked for, whatever the number of threads. */
final class Lazy<T> {
    private final Supplier<T> maker;
    private volatile @Nullable T value;

    Lazy(Supplier<T> maker) {
        this.maker = maker;
    }

    T get() {
        T known = value;
        if (known == null) {
            synchronized (this) {
                known = value;
                if (known == null) {
                    known = maker.get();
                    value = known;
                }
            }
        }
        return known;
    }
}

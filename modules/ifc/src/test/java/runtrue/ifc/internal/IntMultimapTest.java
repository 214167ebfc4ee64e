package runtrue.ifc.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class IntMultimapTest {
    @Test
    void answersEmptyWhenThereIsNothing() {
        IntMultimap map = new IntMultimap(new IntList(0), new IntList(0));

        assertThat(map.get(7)).isEmpty();
        assertThat(map.first(7)).isZero();
    }

    /** A map of lists from the standard library is the judge. */
    @Property(tries = 200)
    void keepsAllValuesOfAKeyInOrder(
            @ForAll @Size(max = 300) List<@IntRange(min = 1, max = 40) Integer> keys, @ForAll @IntRange int start) {
        IntList pairKeys = new IntList(0);
        IntList pairValues = new IntList(0);
        Map<Integer, List<Integer>> expected = new LinkedHashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            pairKeys.add(keys.get(i));
            pairValues.add(start + i);
            expected.computeIfAbsent(keys.get(i), key -> new ArrayList<>()).add(start + i);
        }
        IntMultimap map = new IntMultimap(pairKeys, pairValues);

        for (int key = 1; key <= 41; key++) {
            List<Integer> values = expected.getOrDefault(key, List.of());
            assertThat(map.get(key))
                    .containsExactly(values.stream().mapToInt(v -> v).toArray());
            assertThat(map.first(key)).isEqualTo(values.isEmpty() ? 0 : values.get(0));
        }
    }
}

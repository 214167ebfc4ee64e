package runtrue.rules.judge.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.MaterialLayer;

class MetalsTest {
    /** Layers as "name" or "name:millimetres", from one face to the other. */
    @ParameterizedTest
    @CsvSource({
        "'Aluminium', aluminium",
        "'Steel, galvanised:0.6; Mineral wool:180', zinc-coated steel",
        "'Mineral wool:180; Steel, galvanised:0.6', zinc-coated steel",
        "'Bitumen:4; Aluminium foil:0.1; Mineral wool:180; Concrete:200', unknown",
        "'Tiles:20; Mineral wool:180; Aluminium foil:0.05', unknown",
        "'Copper:0.7; Plywood timber:22', copper",
        "'Aluminium:0.9; Mineral wool:180; Steel, galvanised:0.6', unknown",
        "'Steel', unknown"
    })
    void the_sheets_are_an_outer_layer_and_no_foil(String layers, String metal) {
        assertThat(Metals.ofSheets(read(layers))).isEqualTo(metal);
    }

    private static List<MaterialLayer> read(String layers) {
        return Arrays.stream(layers.split("; "))
                .map(layer -> layer.split(":"))
                .map(parts -> new MaterialLayer(
                        parts[0],
                        parts.length > 1
                                ? OptionalDouble.of(Double.parseDouble(parts[1]) / 1000)
                                : OptionalDouble.empty()))
                .toList();
    }
}

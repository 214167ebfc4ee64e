package runtrue.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.Table.Between;
import runtrue.rules.cel.Evaluator.NoAnswerException;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.units.Unit;

class TableTest {
    private static final TableSpec SPEC = new TableSpec(
            "t",
            List.of(new TableSpec.Axis("x", Optional.of(Unit.METRE)), new TableSpec.Axis("y", Optional.of(Unit.METRE))),
            Unit.METRE);

    private static Table table(Between between, boolean below, boolean above) {
        Table.Axis x = new Table.Axis(List.of(1.0, 2.0, 4.0), List.of(), below, above);
        Table.Axis y = new Table.Axis(List.of(0.0, 10.0), List.of(), below, above);
        return new Table(SPEC, List.of(x, y), List.of(10.0, 30.0, 20.0, 50.0, 60.0, 80.0), between, "");
    }

    @ParameterizedTest
    @CsvSource({
        "LINEAR, 2, 10, 50", "LINEAR, 3, 0, 40", "LINEAR, 2, 5, 35", "LINEAR, 3, 5, 52.5",
        "LESSER, 3, 0, 20", "LESSER, 3, 5, 20", "GREATER, 3, 5, 80", "NONE, 4, 0, 60"
    })
    void values_between_points_follow_the_declaration(Between between, double x, double y, double expected) {
        assertThat(table(between, false, false).at(x, y)).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.9, 0", "4.1, 0", "1, -1", "1, 11"})
    void outside_the_axes_there_is_no_answer(double x, double y) {
        assertThatThrownBy(() -> table(Between.LINEAR, false, false).at(x, y)).isInstanceOf(NoAnswerException.class);
    }

    @Test
    void between_points_without_a_rule_there_is_no_answer() {
        assertThatThrownBy(() -> table(Between.NONE, false, false).at(3.0, 0.0))
                .hasMessage("table t has no value between its points");
    }

    @Test
    void end_values_hold_outside_where_declared() {
        assertThat(table(Between.LINEAR, true, false).at(0.5, 0.0)).isEqualTo(10);
        assertThat(table(Between.LINEAR, false, true).at(9.0, 11.0)).isEqualTo(80);
    }
}

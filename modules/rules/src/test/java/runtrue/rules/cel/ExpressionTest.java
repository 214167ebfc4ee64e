package runtrue.rules.cel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.RuleException;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.Place;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue.Scalar;

class ExpressionTest {
    private static final TableSpec SPAN = new TableSpec(
            "span",
            List.of(
                    new TableSpec.Axis("thickness", Optional.of(Unit.MILLIMETRE)),
                    new TableSpec.Axis("location", Optional.empty())),
            Unit.MILLIMETRE);

    private final Problems problems = new Problems();
    private final ExpressionCompiler compiler =
            new ExpressionCompiler(FactCatalogue.standard().offeredTo(SubjectKind.SPAN), List.of(SPAN), problems);

    private static Scalar scalar(String text) {
        return new Scalar(new Place("r.yaml", 5, 10), text, true, text);
    }

    private Expression compile(String text, FactType type) {
        Optional<Expression> compiled = compiler.compile(scalar(text), type);
        problems.throwIfAny();
        return compiled.orElseThrow();
    }

    private Evaluator.Value evaluate(String text, FactType type, Facts facts) {
        Expression expression = compile(text, type);
        Evaluator evaluator = new Evaluator(List.of(expression), Map.of(), Map.of(SPAN, arguments -> {
            if (!arguments[1].equals("end span")) {
                throw new Evaluator.NoAnswerException("table span has no location " + arguments[1]);
            }
            return 1000 * (Double) arguments[0];
        }));
        return evaluator.evaluate(expression, facts);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 * plane.pitch                                   | 0.2
            plane.pitch / 2 + 2 * plane.pitch | 0.25
            min(1, span.length / quantity("1 m"))                               | 1
            max(1, plane.support_lines, 4)                            | 4
            sqrt(plane.area)                                  | 4
            plane.level ? 1 : 2                               | 2
            span.length < quantity("2.5 m") && plane.support_lines == 3 ? 1 : 0 | 1
            quantity("20 mm") + span.length                   | 2.02
            tables.span(system.thickness, "end span")         | 0.6
            span.kind in ["end span"] ? 7 : 8                 | 7
            """)
    void whole_numbers_and_doubles_mix(String text, double expected) {
        Facts facts = Facts.empty()
                .know("plane.pitch", 0.1, "")
                .know("plane.area", 16, "")
                .know("plane.level", false, "")
                .know("plane.support_lines", 3, "")
                .know("system.thickness", 0.0006, "")
                .know("span.kind", "end span", "")
                .know("span.length", 2, "");
        assertThat(evaluate(text, FactType.NUMBER, facts)).isEqualTo(new Evaluator.Of(expected));
    }

    @Test
    void a_misspelt_fact_is_an_error_with_its_column_and_the_nearest_name() {
        assertThatThrownBy(() -> compile("2 * plane.ptich", FactType.NUMBER))
                .isInstanceOf(RuleException.class)
                .hasMessageStartingWith("r.yaml:5:14: unknown fact \"plane.ptich\"; did you mean \"plane.pitch\"?");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            span.length + plane.pitch                | 5:22 | a length and a angle do not go together
            span.length + 1                          | 5:22 | a length and a plain number
            span.length > plane.area ? 1 : 2         | 5:22 | a length and a area
            sin(span.length)                         | 5:13 | sin takes a angle, this is a length
            sqrt(span.length)                        | 5:14 | square root
            span.length +                            | 5:23 | not a valid expression
            span.kind * 2                            | 5:20 | "*" cannot take (text, number)
            span.kind                                | 5:10 | gives a text; wanted is a number
            maxi(1, 2)                               | 5:14 | unknown function "maxi"; did you mean "max"?
            tables.spam(system.thickness, "x")       | 5:21 | unknown table "tables.spam"; did you mean "tables.span"?
            tables.span(span.length)                 | 5:21 | cannot take
            tables.span(plane.pitch, "x")            | 5:22 | axis thickness of table span is a length, this is a angle
            quantity("20 mn")                        | 5:19 | unknown unit "mn"
            zone.width                               | 5:10 | unknown fact "zone.width"
            """)
    void errors_say_where_and_what(String text, String place, String message) {
        assertThatThrownBy(() -> compile(text, FactType.NUMBER))
                .hasMessageStartingWith("r.yaml:" + place + ":")
                .hasMessageContaining(message);
    }

    @Test
    void a_missing_fact_makes_the_value_unknown_with_the_reason() {
        Facts facts = Facts.empty().miss("settings.transport_length", "is not stated");
        assertThat(evaluate("2 * settings.transport_length", FactType.NUMBER, facts))
                .isEqualTo(new Evaluator.Unknown(List.of("settings.transport_length is not stated")));
    }

    @Test
    void a_missing_fact_does_not_matter_in_a_branch_that_is_not_taken() {
        Facts facts = Facts.empty()
                .know("settings.rolled_on_site", true, "")
                .know("settings.rolling_limit", 60, "")
                .miss("settings.transport_length", "is not stated");
        String text = "settings.rolled_on_site ? settings.rolling_limit : settings.transport_length";
        assertThat(evaluate(text, FactType.NUMBER, facts)).isEqualTo(new Evaluator.Of(60.0));
    }

    @Test
    void a_missing_fact_does_not_matter_where_the_other_side_decides() {
        Facts facts = Facts.empty().know("plane.level", true, "").miss("plane.pitch", "is not known");
        assertThat(evaluate("plane.pitch > quantity(\"2 deg\") && !plane.level", FactType.TRUTH, facts))
                .isEqualTo(new Evaluator.Of(false));
    }

    @Test
    void a_table_without_an_answer_makes_the_value_unknown() {
        Facts facts = Facts.empty().know("system.thickness", 0.0006, "");
        assertThat(evaluate("tables.span(system.thickness, \"eave\")", FactType.NUMBER, facts))
                .isEqualTo(new Evaluator.Unknown(List.of("table span has no location eave")));
    }

    @Test
    void division_by_nothing_makes_the_value_unknown() {
        Facts facts = Facts.empty().know("span.length", 0, "");
        assertThat(evaluate("1 / span.length", FactType.NUMBER, facts)).isInstanceOf(Evaluator.Unknown.class);
    }
}

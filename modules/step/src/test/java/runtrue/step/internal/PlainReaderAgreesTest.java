package runtrue.step.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import runtrue.step.StepFile;
import runtrue.step.StepInstance;
import runtrue.step.StepValue;
import runtrue.step.Text21;
import runtrue.step.internal.SegmentScan.Cuts;

/** Any correct file, cut in any way into pieces, blocks and segments, reads as the plain reader reads it. */
class PlainReaderAgreesTest {
    @Property(tries = 1500)
    void readsAsThePlainReaderDoes(@ForAll("files") String text, @ForAll("cuts") Cuts cuts) {
        Map<Integer, StepInstance> expected = PlainReader.instances(text);

        try (StepFile file = open(text, cuts)) {
            assertThat(file.size()).isEqualTo(expected.size());
            for (StepInstance instance : expected.values()) {
                assertThat(file.instance(instance.id())).isEqualTo(instance);
                assertThat(file.keyword(instance.id())).isEqualTo(instance.keyword());
                compareAttributes(file, instance);
            }
            for (String keyword : file.keywords()) {
                assertThat(file.idsOf(keyword))
                        .containsExactly(expected.values().stream()
                                .filter(instance -> instance.keyword().equals(keyword))
                                .mapToInt(StepInstance::id)
                                .toArray());
            }
        }
    }

    private static void compareAttributes(StepFile file, StepInstance instance) {
        for (int i = 0; i < instance.attributes().size(); i++) {
            List<Integer> found = new ArrayList<>();
            file.references(instance.id(), i, found::add);
            List<Integer> references = new ArrayList<>();
            List<Double> numbers = new ArrayList<>();
            boolean onlyNumbers = collect(instance.attributes().get(i), references, numbers)
                    && instance.attributes().get(i) instanceof StepValue.ListOf;
            assertThat(found).isEqualTo(references);
            double[] read = file.numbers(instance.id(), i);
            assertThat(read != null).isEqualTo(onlyNumbers);
            if (read != null) {
                assertThat(read)
                        .containsExactly(numbers.stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray());
            }
        }
    }

    /** Whether there is nothing but numbers. */
    private static boolean collect(StepValue value, List<Integer> references, List<Double> numbers) {
        if (value instanceof StepValue.ListOf list) {
            boolean only = true;
            for (StepValue item : list.items()) {
                only &= collect(item, references, numbers);
            }
            return only;
        } else if (value instanceof StepValue.Typed typed) {
            collect(typed.value(), references, numbers);
        } else if (value instanceof StepValue.Reference reference) {
            references.add(reference.id());
        } else if (value instanceof StepValue.Whole whole) {
            numbers.add((double) whole.value());
            return true;
        } else if (value instanceof StepValue.Real real) {
            numbers.add(real.value());
            return true;
        }
        return false;
    }

    private static StepFile open(String text, Cuts cuts) {
        return IndexedStepFile.index(FileBytes.of("any.ifc", text.getBytes(StandardCharsets.ISO_8859_1)), cuts);
    }

    @Provide
    Arbitrary<Cuts> cuts() {
        return Combinators.combine(
                        Arbitraries.integers().between(1, 2000),
                        Arbitraries.of(1, 2, 8, 64),
                        Arbitraries.longs().between(20, 2000),
                        Arbitraries.integers().between(1, 5))
                .as(Cuts::new);
    }

    @Provide
    Arbitrary<String> files() {
        return record().list().ofMinSize(1).ofMaxSize(12).map(records -> Text21.file(String.join("", records)));
    }

    /** Tokens with anything blank between them. */
    private static Arbitrary<String> record() {
        Arbitrary<String> keyword =
                Arbitraries.of("IFCSLAB", "IfcBeam", "ifcrelAssociatesMaterial", "A", "A_B2", "ABCDEFGH");
        Arbitrary<List<String>> simple = Combinators.combine(ids(), keyword, attributes(2))
                .as((id, name, values) -> concat(List.of(id, "=", name), values, List.of(";")));
        Arbitrary<List<String>> complex = Combinators.combine(ids(), keyword, attributes(1))
                .as((id, name, values) ->
                        concat(List.of(id, "=", "(", name), values, List.of("B", "(", ")", ")", ";")));
        Arbitrary<List<String>> sections = Arbitraries.just(List.of("ENDSEC", ";", "DATA", ";"));
        return Arbitraries.frequencyOf(Tuple.of(16, simple), Tuple.of(1, complex), Tuple.of(1, sections))
                .flatMap(tokens -> blank().list().ofSize(tokens.size()).map(blanks -> {
                    StringBuilder text = new StringBuilder();
                    for (int i = 0; i < tokens.size(); i++) {
                        text.append(tokens.get(i)).append(blanks.get(i));
                    }
                    return text.toString();
                }));
    }

    private static Arbitrary<String> ids() {
        return Arbitraries.frequencyOf(
                        Tuple.of(8, Arbitraries.integers().between(1, 60)),
                        Tuple.of(1, Arbitraries.integers().between(0, Integer.MAX_VALUE)))
                .map(id -> "#" + id);
    }

    private static Arbitrary<String> blank() {
        return Arbitraries.frequencyOf(
                Tuple.of(10, Arbitraries.just("")),
                Tuple.of(
                        3,
                        Arbitraries.of(
                                " ",
                                "\n",
                                "\r\n",
                                "\r",
                                "\t",
                                "  ",
                                "/**/",
                                "/* it's; #5=A('); */",
                                " /* * / ** // */\n")));
    }

    private static Arbitrary<List<String>> attributes(int depth) {
        return value(depth).list().ofMaxSize(4).map(PlainReaderAgreesTest::bracketed);
    }

    private static List<String> bracketed(List<List<String>> values) {
        List<String> tokens = new ArrayList<>(List.of("("));
        for (int i = 0; i < values.size(); i++) {
            if (i > 0) {
                tokens.add(",");
            }
            tokens.addAll(values.get(i));
        }
        tokens.add(")");
        return tokens;
    }

    private static Arbitrary<List<String>> value(int depth) {
        Arbitrary<String> single = Arbitraries.oneOf(
                Arbitraries.of("$", "*", ".T.", ".NotDefined.", "\"0F3\"", "#1", "#2147483647", "0", "-7", "+3"),
                Arbitraries.doubles().map(PlainReaderAgreesTest::written),
                Arbitraries.integers().between(-1000, 1000).map(i -> i + "."),
                text());
        Arbitrary<List<String>> one = single.map(List::of);
        if (depth == 0) {
            return one;
        }
        Arbitrary<List<String>> typed = value(0).map(inner -> concat(List.of("IfcLabel", "("), inner, List.of(")")));
        return Arbitraries.oneOf(one, one, typed, attributes(depth - 1), numbers());
    }

    private static Arbitrary<List<String>> numbers() {
        return Arbitraries.doubles()
                .between(-1e6, 1e6)
                .map(d -> List.of(written(d)))
                .list()
                .ofMaxSize(12)
                .map(PlainReaderAgreesTest::bracketed);
    }

    private static String written(double value) {
        return Double.toString(value);
    }

    /** Strings that try to be taken for the end of a string, a record or a cut. */
    private static Arbitrary<String> text() {
        return Arbitraries.of(
                        "a",
                        "b c",
                        "''",
                        "\\\\",
                        "\\X2\\00E4\\X0\\",
                        "\\X\\41",
                        "\\X4\\0001F600\\X0\\",
                        ";",
                        "/*",
                        "*/",
                        "(",
                        ")",
                        "; #12=IFCX(",
                        "=",
                        "#3",
                        ",",
                        "long text without anything in it",
                        "\t",
                        "\\X2\\D83DDE00\\X0\\")
                .list()
                .ofMaxSize(5)
                .map(parts -> "'" + String.join("", parts) + "'")
                .flatMap(text -> Arbitraries.of(
                        text, text, text, text.replace(" c", "\r\n c").replace("long", "lo\nng")));
    }

    private static List<String> concat(List<String> before, List<String> between, List<String> after) {
        List<String> all = new ArrayList<>(before);
        all.addAll(between);
        all.addAll(after);
        return all;
    }
}

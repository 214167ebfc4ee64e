package runtrue.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.step.StepValue.Derived;
import runtrue.step.StepValue.Enumeration;
import runtrue.step.StepValue.ListOf;
import runtrue.step.StepValue.Omitted;
import runtrue.step.StepValue.Real;
import runtrue.step.StepValue.Reference;
import runtrue.step.StepValue.Text;
import runtrue.step.StepValue.Typed;
import runtrue.step.StepValue.Whole;

class StepFileTest {
    @Test
    void readsEveryKindOfValue() {
        StepFile file =
                Text21.openRecords("#7= IFCX('a',1,-2.5,.T.,#3,$,*,(1,(2,#4)),IFCLENGTHMEASURE(1.5),\"0F3\",());");

        assertThat(file.instance(7))
                .isEqualTo(new StepInstance(
                        7,
                        "IFCX",
                        List.of(
                                new Text("a"),
                                new Whole(1),
                                new Real(-2.5),
                                new Enumeration("T"),
                                new Reference(3),
                                new Omitted(),
                                new Derived(),
                                new ListOf(List.of(new Whole(1), new ListOf(List.of(new Whole(2), new Reference(4))))),
                                new Typed("IFCLENGTHMEASURE", new Real(1.5)),
                                new StepValue.Binary("0F3"),
                                new ListOf(List.of()))));
    }

    @Test
    void readsTheHeader() {
        StepFile file = Text21.open("""
                ISO-10303-21;
                HEADER; /* c */ FILE_DESCRIPTION (('view', 'b;c'),'2;1');
                FILE_NAME('it''s','2026-01-02T03:04:05',('A','B'),('O'),'pre','made by','auth');
                FILE_SCHEMA (('ifc2x3'));
                ENDSEC;
                DATA;
                ENDSEC;
                END-ISO-10303-21;""");

        assertThat(file.header())
                .isEqualTo(new StepHeader(
                        List.of("view", "b;c"),
                        "2;1",
                        "it's",
                        "2026-01-02T03:04:05",
                        List.of("A", "B"),
                        List.of("O"),
                        "pre",
                        "made by",
                        "auth",
                        List.of("IFC2X3")));
        assertThat(file.size()).isZero();
        assertThat(file.notes()).isEmpty();
    }

    @Test
    void listsInstancesOfAnEntityInFileOrder() {
        StepFile file = Text21.openRecords("#9=B();#2=A();#5=B();#1=b();");

        assertThat(file.idsOf("B")).containsExactly(9, 5, 1);
        assertThat(file.idsOf("C")).isEmpty();
        assertThat(file.keywords()).containsExactlyInAnyOrder("A", "B");
        assertThat(file.size()).isEqualTo(4);
    }

    @Test
    void findsSparseNumbersInAnyOrder() {
        StepFile file = Text21.openRecords("#2147483647=A(1);#5=A(2);#1000000000=A(3);");

        assertThat(file.instance(2147483647).attributes()).containsExactly(new Whole(1));
        assertThat(file.instance(5).attributes()).containsExactly(new Whole(2));
        assertThat(file.instance(1000000000).attributes()).containsExactly(new Whole(3));
        assertThat(file.contains(6)).isFalse();
        assertThat(file.contains(-1)).isFalse();
    }

    @Test
    void passesOnReferencesOfOneAttribute() {
        StepFile file = Text21.openRecords("#1=REL('#8;),',#2,(#3,/*#9*/ #4,('#5',#6)),$,#7);");

        assertThat(references(file, 1)).containsExactly(2);
        assertThat(references(file, 2)).containsExactly(3, 4, 6);
        assertThat(references(file, 3)).isEmpty();
        assertThat(references(file, 4)).containsExactly(7);
    }

    @Test
    void readsListsOfNumbersRowByRow() {
        StepFile file = Text21.openRecords("#1=P((1.,2.5,-3E2),((1,2),(3.,4.)),(),(1,$),$,(IFCREAL(1.)),7.);");

        assertThat(file.numbers(1, 0)).containsExactly(1, 2.5, -300);
        assertThat(file.numbers(1, 1)).containsExactly(1, 2, 3, 4);
        assertThat(file.numbers(1, 2)).isEmpty();
        assertThat(file.numbers(1, 3)).isNull();
        assertThat(file.numbers(1, 4)).isNull();
        assertThat(file.numbers(1, 5)).isNull();
        assertThat(file.numbers(1, 6)).isNull();
    }

    @Test
    void countsLinesWithEveryKindOfLineEnd() {
        StepFile file = Text21.openRecords("#1=A();\r#2=A();\r\n#3=A(\n);\n\r#4=A();");

        assertThat(List.of(file.line(1), file.line(2), file.line(3), file.line(4)))
                .containsExactly(5, 6, 7, 10);
    }

    @Test
    void joinsSeveralDataSections() {
        StepFile file = Text21.openRecords("#1=A();\nENDSEC;\nDATA('second',('IFC4'));\n#2=A();");

        assertThat(file.idsOf("A")).containsExactly(1, 2);
    }

    @Test
    void passesOverComplexInstancesWithANote() {
        StepFile file = Text21.openRecords("#1=A();\n#2 = ( B(1) C(';') );\n#3=A();");

        assertThat(file.idsOf("A")).containsExactly(1, 3);
        assertThat(file.contains(2)).isFalse();
        assertThat(file.notes()).singleElement().satisfies(note -> {
            assertThat(note.message()).contains("#2", "complex");
            assertThat(note.line()).isEqualTo(6);
            assertThat(note.id()).isEqualTo(2);
        });
    }

    @Test
    void keepsTheFirstOfSeveralRecordsWithOneNumber() {
        StepFile file = Text21.openRecords("#1=A('first');\n#2=B();\n#1=B('second');");

        assertThat(file.size()).isEqualTo(2);
        assertThat(file.keyword(1)).isEqualTo("A");
        assertThat(file.instance(1).attributes()).containsExactly(new Text("first"));
        assertThat(file.idsOf("B")).containsExactly(2);
        assertThat(file.notes()).singleElement().satisfies(note -> {
            assertThat(note.message()).contains("#1", "again", "first");
            assertThat(note.line()).isEqualTo(7);
        });
    }

    @Test
    void namesOnlyKeywordsThatCount() {
        StepFile file = Text21.openRecords("#1=A();#1=B();");

        assertThat(file.keywords()).containsExactly("A");
    }

    @Test
    void capsNotesOfOneKind() {
        StringBuilder records = new StringBuilder();
        for (int i = 1; i <= 250; i++) {
            records.append("#").append(i).append("=(A()B());\n");
        }
        StepFile file = Text21.openRecords(records.toString());

        assertThat(file.notes()).hasSize(101);
        assertThat(file.notes().get(100).message()).startsWith("150 more");
    }

    @Test
    void notesMissingSchemaAndTextBehindTheEnd() {
        StepFile file = Text21.open(Text21.file("#1=A();").replace("FILE_SCHEMA(('IFC4'));", "") + "rest");

        assertThat(file.header().schemas()).isEmpty();
        assertThat(file.notes())
                .extracting(StepNote::message)
                .anySatisfy(message -> assertThat(message).contains("FILE_SCHEMA"))
                .anySatisfy(message -> assertThat(message).contains("after END-ISO-10303-21"));
    }

    @Test
    void refusesToReadAfterClose(@TempDir Path folder) throws IOException {
        Path path = folder.resolve("closed.ifc");
        Files.writeString(path, Text21.file("#1=A(1);"));
        StepFile file = StepFile.open(path);
        assertThat(file.instance(1).keyword()).isEqualTo("A");
        file.close();
        file.close();

        assertThatThrownBy(() -> file.instance(1))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("closed.ifc");
        assertThatThrownBy(() -> file.idsOf("A")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> file.numbers(1, 0)).isInstanceOf(IllegalStateException.class);
        Files.delete(path);
    }

    @Test
    void readsFromManyThreads() {
        StringBuilder records = new StringBuilder();
        for (int i = 1; i <= 2000; i++) {
            records.append("#").append(i).append("=A(").append(i).append(");\n");
        }
        StepFile file = Text21.openRecords(records.toString());

        assertThat(IntStream.rangeClosed(1, 2000)
                        .parallel()
                        .allMatch(i -> file.instance(i).attributes().equals(List.of(new Whole(i)))))
                .isTrue();
    }

    private static List<Integer> references(StepFile file, int attribute) {
        List<Integer> found = new ArrayList<>();
        file.references(1, attribute, found::add);
        return found;
    }
}

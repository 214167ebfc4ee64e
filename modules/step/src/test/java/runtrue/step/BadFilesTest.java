package runtrue.step;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BadFilesTest {
    private static final String WHOLE = Text21.file("#1=A('x');\n#2=B(#1,(1.,2.));");

    @Test
    void anEmptyFileIsCalledEmpty() {
        refused("").hasMessageContainingAll("model.ifc", "empty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PK\u0003\u0004", "<ifcXML/>", "ISO-10303-28;", "{}", "\u0000\u0000"})
    void anotherKindOfFileIsNotTakenForAStepFile(String text) {
        refused(text).hasMessageContainingAll("model.ifc", "ISO-10303-21");
    }

    @Test
    void aFileCutShortAnywhereIsRefused() {
        int end = WHOLE.indexOf("END-ISO-10303-21") + "END-ISO-10303-21".length();
        for (int length = 0; length < end; length++) {
            refused(WHOLE.substring(0, length)).hasMessageContaining("model.ifc");
        }
    }

    @Test
    void aFileCutShortBetweenRecordsSaysSo() {
        refused(WHOLE.substring(0, WHOLE.indexOf("#2")))
                .hasMessageContainingAll("model.ifc, line 6", "cut short", "END-ISO-10303-21");
    }

    @Test
    void aFileCutShortWithinARecordNamesTheRecord() {
        refused(WHOLE.substring(0, WHOLE.indexOf("2.))"))).hasMessageContainingAll("#2", "line 6", "cut short");
    }

    @Test
    void aStringThatIsNotClosedIsFoundWhereItBegins() {
        refused(Text21.file("#1=A('x');\n#2=A('y);\n#3=A('z');\n#4=A('u);\n#5=A();"))
                .hasMessageContainingAll("line 6", "string", "not closed");
    }

    @Test
    void aStringThatIsNotClosedInTheLastRecordIsFound() {
        refused(Text21.file("#1=A('x');\n#2=A('y);")).hasMessageContainingAll("#2", "line 6", "not closed");
    }

    @Test
    void aCommentThatIsNotClosedIsFound() {
        refused(Text21.file("#1=A();\n/* #2=A();")).hasMessageContainingAll("comment", "line 6");
    }

    @Test
    void aMissingSemicolonLosesNoRecord() {
        refused(Text21.file("#1=A('x')\n#2=A('y');\n#3=A();")).hasMessageContainingAll("line 6", "semicolon");
    }

    @Test
    void aNumberBeyondTheLargestIsRefused() {
        refused(Text21.file("#1=A();\n#2147483648=A();"))
                .hasMessageContainingAll("line 6", "#2147483648", "2147483647");
    }

    @Test
    void aReferenceBeyondTheLargestIsRefused() {
        StepFile file = Text21.openRecords("#1=A(#99999999999);");
        assertThatThrownBy(() -> file.instance(1))
                .isInstanceOf(StepException.class)
                .hasMessageContainingAll("model.ifc", "line 5", "#1 A", "#99999999999");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"#=A();", "#x=A();", "#1 A();", "#1=;", "#1=A;", "#1='x';", "junk;", "#1==A();", "#-1=A();"})
    void aRecordWithAWrongBeginningIsRefusedWithItsLine(String record) {
        refused(Text21.file("#7=A();\n" + record)).hasMessageContaining("model.ifc, line 6");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 2", "(1", "1)", "'a' 'b'", "@", ".X", "A", "A(1,2)", "\"9\"", "\"0G\"", "#", ",", "1,"})
    void anAttributeThatIsNoValueIsRefusedWithItsRecord(String attribute) {
        StepFile file = Text21.openRecords("#7=A();\n#8=IFCX(" + attribute + ");");
        assertThatThrownBy(() -> file.instance(8))
                .isInstanceOf(StepException.class)
                .hasMessageStartingWith("model.ifc, line 6, #8 IFCX: ");
    }

    @Test
    void nestingIsBounded() {
        StepFile file = Text21.openRecords("#1=A(" + "(".repeat(100_000) + ")".repeat(100_000) + ");");
        assertThatThrownBy(() -> file.instance(1))
                .isInstanceOf(StepException.class)
                .hasMessageContainingAll("#1", "deep");
    }

    @Test
    void anUnknownInstanceIsNamed() {
        StepFile file = Text21.openRecords("#1=A();");
        assertThatThrownBy(() -> file.instance(2))
                .isInstanceOf(StepException.class)
                .hasMessageContainingAll("model.ifc", "#2");
    }

    @Test
    void anAttributeBehindTheLastIsRefused() {
        StepFile file = Text21.openRecords("#1=A(1);#2=A();");
        assertThatThrownBy(() -> file.numbers(1, 1))
                .isInstanceOf(StepException.class)
                .hasMessageContaining("#1 A");
        assertThatThrownBy(() -> file.references(2, 0, id -> {})).isInstanceOf(StepException.class);
    }

    @Test
    void aMissingFileIsNamed(@TempDir Path folder) {
        Path missing = folder.resolve("missing.ifc");
        assertThatThrownBy(() -> StepFile.open(missing))
                .isInstanceOf(StepException.class)
                .hasMessageContaining("missing.ifc");
    }

    @Test
    void aFolderIsRefused(@TempDir Path folder) {
        assertThatThrownBy(() -> StepFile.open(folder)).isInstanceOf(StepException.class);
    }

    @Test
    void aRefusedFileIsGivenBack(@TempDir Path folder) throws IOException {
        Path path = folder.resolve("bad.ifc");
        Files.writeString(path, "no");
        assertThatThrownBy(() -> StepFile.open(path)).isInstanceOf(StepException.class);
        Files.delete(path);
    }

    private static AbstractThrowableAssert<?, ? extends Throwable> refused(String text) {
        return assertThatThrownBy(() -> Text21.open(text)).isInstanceOf(StepException.class);
    }
}

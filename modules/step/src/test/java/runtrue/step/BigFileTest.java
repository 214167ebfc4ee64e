package runtrue.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Some GiB of nothing between a few records; on most file systems the nothing takes no room. */
@Tag("slow")
class BigFileTest {
    private static final long GIB = 1L << 30;

    @Test
    void recordsAcrossPiecesOfABigFileAreRead(@TempDir Path folder) throws IOException {
        Path path = folder.resolve("big.ifc");
        try (FileChannel out = FileChannel.open(
                path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.SPARSE)) {
            String whole = Text21.file("@");
            write(out, 0, whole.substring(0, whole.indexOf('@')) + "#1=A('first');");
            write(out, GIB - 7, "#2=A('across one border');");
            write(out, 2 * GIB - 9, "#3=A('across\n another');");
            write(out, 4 * GIB + 5, "#4=A('beyond the range of int');" + whole.substring(whole.indexOf('@') + 1));
        }
        try (StepFile file = StepFile.open(path)) {
            assertThat(file.idsOf("A")).containsExactly(1, 2, 3, 4);
            assertThat(text(file, 2)).isEqualTo("across one border");
            assertThat(text(file, 3)).isEqualTo("across another");
            assertThat(text(file, 4)).isEqualTo("beyond the range of int");
            assertThat(file.line(4)).isEqualTo(6);
        }
    }

    private static String text(StepFile file, int id) {
        return ((StepValue.Text) file.instance(id).attributes().get(0)).value();
    }

    private static void write(FileChannel out, long place, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII));
        while (bytes.hasRemaining()) {
            out.write(bytes, place + bytes.position());
        }
    }
}

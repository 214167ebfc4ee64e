package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;
import static runtrue.cli.FakeCheck.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    @TempDir
    Path root;

    @Test
    void files_appear_under_their_own_names_and_nothing_else_stays() throws IOException {
        OutputFolder.open(root).write("hall", List.of(file("a.txt", "A"), file("b.txt", "B")), 2);

        assertThat(root.resolve("hall/a.txt")).hasContent("A");
        assertThat(root.resolve("hall/b.txt")).hasContent("B");
        try (var files = Files.list(root.resolve("hall"))) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void the_earlier_files_stay_when_one_of_several_fails() throws IOException {
        OutputFolder folder = OutputFolder.open(root);
        folder.write("hall", List.of(file("a.txt", "earlier"), file("b.txt", "earlier")), 1);
        OutputFile failing = new OutputFile("b.txt", out -> {
            out.write('x');
            throw new IOException("no space left");
        });

        assertThatThrownBy(() -> folder.write("hall", List.of(file("a.txt", "new"), failing), 1))
                .isInstanceOf(OutputException.class)
                .hasMessageContaining("hall")
                .hasMessageContaining("no space left");

        assertThat(root.resolve("hall/a.txt")).hasContent("earlier");
        assertThat(root.resolve("hall/b.txt")).hasContent("earlier");
        try (var files = Files.list(root.resolve("hall"))) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void drawings_of_an_earlier_issue_go_and_those_of_others_stay() throws IOException {
        OutputFolder folder = OutputFolder.open(root);
        folder.write("hall", List.of(file("roof-plan-1.svg", "earlier"), file("roof-plan-2.svg", "earlier")), 1);
        Path marked = Files.writeString(root.resolve("hall/roof-plan-2-marked.svg"), "by hand");

        folder.write("hall", List.of(file("roof-plan-1.svg", "new")), 1);

        assertThat(root.resolve("hall/roof-plan-1.svg")).hasContent("new");
        assertThat(root.resolve("hall/roof-plan-2.svg")).doesNotExist();
        assertThat(marked).hasContent("by hand");
    }

    @Test
    void a_fault_in_what_writes_a_file_comes_through_as_it_is() {
        OutputFile failing = new OutputFile("a.txt", out -> {
            throw new IllegalStateException("sheet without a name");
        });

        assertThatThrownBy(() -> OutputFolder.open(root).write("hall", List.of(failing), 4))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("sheet without a name");
    }

    @Test
    void others_may_read_the_results_as_they_may_any_new_file() throws IOException {
        assumeThat(root.getFileSystem().supportedFileAttributeViews()).contains("posix");
        OutputFolder.open(root).write("hall", List.of(file("a.txt", "A")), 1);
        Path plain = Files.writeString(root.resolve("plain.txt"), "x");

        assertThat(permissions(root.resolve("hall/a.txt"))).isEqualTo(permissions(plain));
    }

    @Test
    void a_file_name_with_a_path_in_it_is_refused() {
        assertThatThrownBy(() -> file("../a.txt", "A")).hasMessageContaining("not a plain file name");
    }

    private static java.util.Set<PosixFilePermission> permissions(Path path) throws IOException {
        return Files.getPosixFilePermissions(path);
    }
}

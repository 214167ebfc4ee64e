package runtrue.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DropsTest {
    @TempDir
    Path root;

    private final List<String> notes = new ArrayList<>();

    @Test
    void a_folder_with_models_is_one_drop_of_its_files_by_name() throws IOException {
        touch("hall/b.ifc", "hall/A.IFC", "hall/c.ifcZIP", "hall/readme.txt");

        assertThat(find("hall")).singleElement().satisfies(drop -> {
            assertThat(drop.name()).isEqualTo("hall");
            assertThat(fileNames(drop)).containsExactly("A.IFC", "b.ifc", "c.ifcZIP");
            assertThat(drop.files().get(2).kind()).isEqualTo(ModelFile.Kind.IFCZIP);
            assertThat(drop.settingsFile()).isEmpty();
        });
    }

    @Test
    void a_folder_of_folders_is_a_batch_named_by_what_lies_below_it() throws IOException {
        touch("batch/west/roof.ifc", "batch/east/2/roof.ifc", "batch/east/1/roof.ifc", "batch/empty/x.txt");

        assertThat(find("batch")).extracting(Drop::name).containsExactly("east-1", "east-2", "west");
    }

    @Test
    void files_beside_sub_folders_are_a_drop_of_their_own() throws IOException {
        touch("batch/all.ifc", "batch/west/roof.ifc");

        assertThat(find("batch")).extracting(Drop::name).containsExactly("batch", "west");
    }

    @Test
    void files_given_together_are_one_drop() throws IOException {
        touch("hall/roof.ifc", "hall/steel.ifc");

        assertThat(find("hall/steel.ifc", "hall/roof.ifc")).singleElement().satisfies(drop -> {
            assertThat(drop.name()).isEqualTo("hall");
            assertThat(fileNames(drop)).containsExactly("roof.ifc", "steel.ifc");
        });
    }

    @Test
    void a_single_file_names_its_drop() throws IOException {
        touch("hall/roof.v2.ifc");

        assertThat(find("hall/roof.v2.ifc")).extracting(Drop::name).containsExactly("roof.v2");
    }

    @Test
    void names_stay_unique_where_case_does_not_count() throws IOException {
        touch("one/Hall/a.ifc", "two/hall/a.ifc");

        assertThat(find("one", "two")).extracting(Drop::name).containsExactly("Hall", "hall-2");
    }

    @Test
    void the_settings_file_beside_the_models_belongs_to_the_drop() throws IOException {
        touch("hall/roof.ifc", "hall/runtrue.yaml");

        assertThat(find("hall").get(0).settingsFile()).contains(root.resolve("hall/runtrue.yaml"));
        assertThat(find("hall/roof.ifc").get(0).settingsFile()).contains(root.resolve("hall/runtrue.yaml"));
    }

    @Test
    void files_from_several_folders_take_no_settings_from_either() throws IOException {
        touch("a/roof.ifc", "a/runtrue.yaml", "b/steel.ifc");

        assertThat(find("a/roof.ifc", "b/steel.ifc").get(0).settingsFile()).isEmpty();
    }

    @Test
    void hidden_and_lock_files_are_passed_over() throws IOException {
        touch("hall/roof.ifc", "hall/.hidden.ifc", "hall/~$roof.ifc", "hall/.git/x.ifc", "hall/__MACOSX/roof.ifc");

        assertThat(find("hall"))
                .singleElement()
                .satisfies(drop -> assertThat(fileNames(drop)).containsExactly("roof.ifc"));
    }

    @Test
    void a_loop_of_links_ends() throws IOException {
        touch("hall/roof.ifc");
        link("hall/again", root.resolve("hall"));

        assertThat(find("hall")).extracting(Drop::name).containsExactly("hall");
    }

    @Test
    void a_file_reached_twice_counts_once() throws IOException {
        touch("hall/roof.ifc");
        link("hall/roof-latest.ifc", root.resolve("hall/roof.ifc"));

        assertThat(find("hall", "hall/roof.ifc"))
                .singleElement()
                .satisfies(drop -> assertThat(drop.files()).hasSize(1));
    }

    @Test
    void a_folder_without_models_is_noted_when_others_have_some() throws IOException {
        touch("hall/roof.ifc", "empty/readme.txt");

        assertThat(find("empty", "hall")).hasSize(1);
        assertThat(notes).singleElement().asString().contains("empty").contains("holds no .ifc");
    }

    @Test
    void ifc_xml_is_noted() throws IOException {
        touch("hall/roof.ifc", "hall/roof.ifcxml");

        assertThat(find("hall").get(0).files()).hasSize(1);
        assertThat(notes).singleElement().asString().contains("roof.ifcxml").contains("IFC-XML is not read");
    }

    @Test
    void nothing_found_at_all_is_refused() throws IOException {
        touch("empty/readme.txt");

        assertThatThrownBy(() -> find("empty"))
                .isInstanceOf(DropException.class)
                .hasMessageContaining("Nothing to check")
                .hasMessageContaining("empty");
    }

    @Test
    void a_path_that_does_not_exist_is_refused() {
        assertThatThrownBy(() -> find("nowhere"))
                .isInstanceOf(DropException.class)
                .hasMessageContaining("nowhere: no such file or folder");
    }

    @Test
    void a_file_of_another_kind_is_refused() throws IOException {
        touch("plan.dwg", "roof.ifcxml");

        assertThatThrownBy(() -> find("plan.dwg")).hasMessageContaining("plan.dwg: not a model file");
        assertThatThrownBy(() -> find("roof.ifcxml")).hasMessageContaining("IFC-XML is not read");
    }

    private List<Drop> find(String... paths) {
        return Drops.find(List.of(paths).stream().map(root::resolve).toList(), notes::add);
    }

    private static List<String> fileNames(Drop drop) {
        return drop.files().stream().map(ModelFile::name).toList();
    }

    private void touch(String... files) throws IOException {
        for (String file : files) {
            Path path = root.resolve(file);
            Files.createDirectories(path.getParent());
            Files.writeString(path, "x");
        }
    }

    private void link(String name, Path target) throws IOException {
        boolean made;
        try {
            Files.createSymbolicLink(root.resolve(name), target);
            made = true;
        } catch (UnsupportedOperationException e) {
            made = false;
        }
        assumeThat(made).as("this file system makes symbolic links").isTrue();
    }
}

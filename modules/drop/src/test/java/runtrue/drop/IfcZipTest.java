package runtrue.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IfcZipTest {
    private static final ArchiveLimits SMALL = new ArchiveLimits(5, 3_000_000, 200, 1000);
    private static final byte[] MODEL = "ISO-10303-21;".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    @Test
    void a_small_model_is_kept_in_memory() throws IOException {
        try (OpenedModels opened = zip(Map.of("roof.ifc", MODEL)).open(SMALL)) {
            assertThat(opened.models()).singleElement().isInstanceOfSatisfying(ModelSource.InMemory.class, model -> {
                assertThat(model.name()).isEqualTo("drop.ifczip/roof.ifc");
                assertThat(model.content()).isEqualTo(MODEL);
            });
        }
    }

    @Test
    void a_large_model_goes_to_disc_until_closed() throws IOException {
        byte[] large = noise(200_000);
        Path unpacked;
        try (OpenedModels opened = zip(Map.of("roof.ifc", large)).open(SMALL)) {
            unpacked = ((ModelSource.OnDisk) opened.models().get(0)).path();
            assertThat(unpacked).hasBinaryContent(large);
        }
        assertThat(unpacked).doesNotExist();
        assertThat(unpacked.getParent()).doesNotExist();
    }

    @Test
    void several_models_come_by_name_and_other_files_are_left_alone() throws IOException {
        ModelFile file = zip(Map.of("b.ifc", MODEL, "sub/a.IFC", MODEL, "texture.png", MODEL, ".x.ifc", MODEL));

        try (OpenedModels opened = file.open(SMALL)) {
            assertThat(opened.models())
                    .extracting(ModelSource::name)
                    .containsExactly("drop.ifczip/b.ifc", "drop.ifczip/a.IFC");
        }
    }

    @Test
    void an_entry_name_never_becomes_a_path() throws IOException {
        ModelFile file = zip(Map.of("../../evil\u001b[2J.ifc", noise(5000)));

        try (OpenedModels opened = file.open(SMALL)) {
            ModelSource.OnDisk model = (ModelSource.OnDisk) opened.models().get(0);
            assertThat(model.name()).isEqualTo("drop.ifczip/evil?[2J.ifc");
            assertThat(model.path().getFileName()).hasToString("model-0.ifc");
        }
    }

    @Test
    void too_many_entries_are_refused() throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        for (int i = 0; i < 6; i++) {
            entries.put(i + ".ifc", MODEL);
        }
        ModelFile file = zip(entries);

        refused(() -> file.open(SMALL), "holds 6 entries; at most 5 are read");
    }

    @Test
    void too_much_in_total_is_refused() throws IOException {
        ModelFile file = zip(Map.of("a.ifc", noise(2_000_000), "b.ifc", noise(2_000_000)));

        refused(() -> file.open(SMALL), "unpacks to more than 3000000 bytes");
    }

    @Test
    void an_absurd_ratio_is_refused() throws IOException {
        ModelFile file = zip(Map.of("a.ifc", new byte[2_000_000]));

        refused(() -> file.open(SMALL), "unpacks to more than 200 times its packed size");
    }

    @Test
    void an_archive_in_an_archive_is_refused() throws IOException {
        ModelFile byName = zip(Map.of("a.ifc", MODEL, "more.zip", MODEL));
        refused(() -> byName.open(SMALL), "holds another archive, more.zip");

        ModelFile byContent = zip(Map.of("a.ifc", zipped(Map.of("b.ifc", MODEL))));
        refused(() -> byContent.open(SMALL), "a.ifc is itself an archive");
    }

    @Test
    void ifc_xml_is_refused_by_its_name() throws IOException {
        ModelFile file = zip(Map.of("roof.ifcxml", MODEL));

        refused(() -> file.open(SMALL), "holds IFC-XML, which is not read");
    }

    @Test
    void an_archive_without_models_is_refused() throws IOException {
        ModelFile file = zip(Map.of("readme.txt", MODEL));

        refused(() -> file.open(SMALL), "holds no .ifc file");
    }

    @Test
    void what_is_no_archive_is_refused() throws IOException {
        ModelFile file = written("ISO-10303-21;".getBytes(StandardCharsets.UTF_8));

        refused(() -> file.open(SMALL), "not a readable zip archive");
    }

    @Test
    void a_damaged_entry_is_refused() throws IOException {
        byte[] stored = stored("a.ifc", noise(500));
        stored[100] ^= 1;
        ModelFile file = written(stored);

        refused(() -> file.open(SMALL), "a.ifc is damaged");
    }

    @Test
    void nothing_stays_on_disc_when_a_later_entry_is_refused() throws IOException {
        Path scratch = Files.createDirectories(folder.resolve("scratch"));
        ModelFile file = zip(Map.of("a.ifc", noise(2_000_000), "b.ifc", noise(2_000_000)));

        refused(() -> new IfcZip(file, SMALL, scratch).unpack(), "unpacks to more than");

        assertThat(scratch).isEmptyDirectory();
    }

    /** Expected value: the test vector for "abc" in FIPS 180-2, appendix B.1 (from memory). */
    @Test
    void the_hash_is_that_of_the_file() throws IOException {
        assertThat(written("abc".getBytes(StandardCharsets.US_ASCII)).sha256())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    private static void refused(ThrowingCallable open, String reason) {
        assertThatThrownBy(open)
                .isInstanceOf(DropException.class)
                .hasMessageContaining("drop.ifczip: ")
                .hasMessageContaining(reason);
    }

    private ModelFile zip(Map<String, byte[]> entries) throws IOException {
        return written(zipped(entries));
    }

    private ModelFile written(byte[] content) throws IOException {
        Path path = folder.resolve("drop.ifczip");
        Files.write(path, content);
        return new ModelFile("drop.ifczip", path, content.length, ModelFile.Kind.IFCZIP);
    }

    private static byte[] zipped(Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : new TreeMap<>(entries).entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] stored(String name, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            ZipEntry entry = new ZipEntry(name);
            entry.setMethod(ZipEntry.STORED);
            entry.setSize(content.length);
            var crc = new java.util.zip.CRC32();
            crc.update(content);
            entry.setCrc(crc.getValue());
            zip.putNextEntry(entry);
            zip.write(content);
        }
        return bytes.toByteArray();
    }

    /** Bytes that do not pack, the same on every run. */
    private static byte[] noise(int size) {
        byte[] bytes = new byte[size];
        new java.util.Random(7).nextBytes(bytes);
        return bytes;
    }
}

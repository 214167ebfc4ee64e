package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.opensourcebim.bcf.BcfException;
import org.opensourcebim.bcf.BcfFile;
import org.opensourcebim.bcf.TopicFolder;
import org.opensourcebim.bcf.visinfo.OrthogonalCamera;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xmlunit.builder.Input;
import org.xmlunit.xpath.JAXPXPathEngine;
import runtrue.report.bcf.BcfVersion;
import runtrue.report.bcf.IssueFile;
import runtrue.report.bcf.IssueGrouping;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** Element orders and names by the published XML schemas of BCF 2.1 and 3.0 (buildingSMART, BCF-XML repository). */
class IssueFileTest {
    private static final String SPAN = "Internal span: the internal span between support lines 1 and 3";
    private static final CheckResult GABLE = InventedGable.drop(1);

    /** org.opensourcebim:bcf knows nothing of this program and reads version 2.1. */
    @Test
    void anIndependentReaderFindsEachFindingWithItsElementsAndItsPicture() throws IOException, BcfException {
        BcfFile read = BcfFile.read(bytes(GABLE, BcfVersion.V2_1));
        assertThat(read.getVersion().getVersionId()).isEqualTo("2.1");
        assertThat(read.getTopicFolders())
                .extracting(f -> f.getMarkup().getTopic().getTitle())
                .containsExactlyInAnyOrder(SPAN, "Internal span: not assessed");
        TopicFolder span = read.getTopicFolders().stream()
                .filter(f -> f.getMarkup().getTopic().getTitle().equals(SPAN))
                .findFirst()
                .orElseThrow();
        assertThat(span.getUuid().version()).isEqualTo(5);
        assertThat(span.getMarkup().getHeader().getFile())
                .extracting("ifcProject")
                .contains("1MillLaneStructure0000");
        assertThat(span.getVisualizationInfo().getComponents().getSelection().getComponent())
                .extracting("ifcGuid")
                .contains("2Pm5X1aVr5cwTq8dYzN3aD");
        assertThat(ImageIO.read(new ByteArrayInputStream(span.getDefaultSnapShot())))
                .satisfies(image -> assertThat(image.getWidth()).isEqualTo(640))
                .satisfies(image -> assertThat(image.getHeight()).isEqualTo(480));
    }

    @Test
    void theCameraLooksAtThePlaceFromBeyondTheRoof() throws IOException, BcfException {
        BcfFile read = BcfFile.read(bytes(GABLE, BcfVersion.V2_1));
        var place = GABLE.findings().get(0).place().orElseThrow();
        OrthogonalCamera camera = read.getTopicFolders().stream()
                .map(f -> f.getVisualizationInfo().getOrthogonalCamera())
                .filter(c -> c.getViewToWorldScale() > 0)
                .findFirst()
                .orElseThrow();
        double[] to = {
            place.xMetres() - camera.getCameraViewPoint().getX(),
            place.yMetres() - camera.getCameraViewPoint().getY(),
            place.zMetres() - camera.getCameraViewPoint().getZ()
        };
        double distance = Math.sqrt(to[0] * to[0] + to[1] * to[1] + to[2] * to[2]);
        assertThat(distance).isGreaterThan(15);
        assertThat(to[0] / distance).isCloseTo(camera.getCameraDirection().getX(), within(1e-5));
        assertThat(to[1] / distance).isCloseTo(camera.getCameraDirection().getY(), within(1e-5));
        assertThat(to[2] / distance).isCloseTo(camera.getCameraDirection().getZ(), within(1e-5));
        assertThat(camera.getCameraDirection().getZ()).isNegative();
    }

    @ParameterizedTest
    @EnumSource(BcfVersion.class)
    void everyTopicHasWhatItsSchemaRequiresInItsOrder(BcfVersion version) throws IOException {
        List<String> wanted =
                version == BcfVersion.V2_1 ? List.of("Header", "Topic", "Viewpoints") : List.of("Header", "Topic");
        Map<String, String> files = files(bytes(GABLE, version));
        List<String> markups = files.entrySet().stream()
                .filter(e -> e.getKey().endsWith("markup.bcf"))
                .map(Map.Entry::getValue)
                .toList();
        assertThat(markups).hasSize(2).allSatisfy(markup -> {
            assertThat(names(markup, "/Markup/*")).isEqualTo(wanted);
            assertThat(names(markup, "/Markup/Topic/*"))
                    .startsWith("Title", "Priority", "Labels")
                    .containsSubsequence(
                            "CreationDate", "CreationAuthor", "ModifiedDate", "ModifiedAuthor", "Description");
            assertThat(nodes(markup, "/Markup/Topic/@TopicType | /Markup/Topic/@TopicStatus"))
                    .hasSize(2);
        });
    }

    @Test
    void theLaterVersionListsTheWordsThatTopicsUse() throws IOException {
        Map<String, String> files = files(bytes(GABLE, BcfVersion.V3_0));
        assertThat(files).containsKeys("bcf.version", "extensions.xml");
        assertThat(names(Objects.requireNonNull(files.get("extensions.xml")), "/Extensions/*"))
                .containsExactly(
                        "TopicTypes", "TopicStatuses", "Priorities", "TopicLabels", "Users", "SnippetTypes", "Stages");
        String view = files.entrySet().stream()
                .filter(e -> e.getKey().endsWith("viewpoint.bcfv"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        assertThat(names(view, "/VisualizationInfo/*")).containsExactly("Components", "OrthogonalCamera", "Lines");
        assertThat(names(view, "/VisualizationInfo/OrthogonalCamera/*"))
                .containsExactly(
                        "CameraViewPoint", "CameraDirection", "CameraUpVector", "ViewToWorldScale", "AspectRatio");
    }

    @Test
    void whatWasConcededIsClosedAndSaysByWhom() throws IOException, BcfException {
        assertThat(BcfFile.read(bytes(MillLane.result(), BcfVersion.V2_1)).getTopicFolders())
                .filteredOn(f -> f.getMarkup().getTopic().getTopicStatus().equals("Closed"))
                .singleElement()
                .satisfies(f -> assertThat(f.getMarkup().getComment())
                        .singleElement()
                        .satisfies(c -> assertThat(c.getComment()).contains("A. Miller")));
    }

    /** Or the answer that somebody wrote to one of them would be lost with the next drop. */
    @Test
    void aFindingKeepsItsTopicFromDropToDrop() throws IOException {
        Map<String, String> first = files(bytes(InventedGable.drop(1), BcfVersion.V3_0));
        Map<String, String> second = files(bytes(InventedGable.drop(2), BcfVersion.V3_0));
        assertThat(second.keySet()).containsAll(first.keySet());
        assertThat(first.keySet())
                .filteredOn(n -> n.endsWith("markup.bcf"))
                .allSatisfy(name -> assertThat(
                                UUID.fromString(name.substring(0, 36)).version())
                        .isEqualTo(5));
    }

    @ParameterizedTest
    @EnumSource(BcfVersion.class)
    void theSameResultGivesTheSameBytes(BcfVersion version) throws IOException {
        assertThat(bytes(GABLE, version)).isEqualTo(bytes(InventedGable.drop(1), version));
    }

    @Test
    void whatAModelSaysStaysText() throws IOException {
        Map<String, String> files = files(bytes(InventedGable.drop(1, "</Title>\u0000<b x='"), BcfVersion.V2_1));
        assertThat(files.entrySet())
                .filteredOn(e -> e.getKey().endsWith("markup.bcf"))
                .isNotEmpty()
                .allSatisfy(e -> assertThat(nodes(e.getValue(), "//b")).isEmpty());
    }

    @Test
    void anEarlierResultGivesCommentsOnWhatIsNew() throws IOException, BcfException {
        CheckResult compared = GABLE.since(InventedGable.sound());
        assertThat(BcfFile.read(bytes(compared, BcfVersion.V2_1)).getTopicFolders())
                .filteredOn(f -> f.getMarkup().getTopic().getTitle().equals(SPAN))
                .singleElement()
                .satisfies(f -> assertThat(f.getMarkup().getComment())
                        .singleElement()
                        .satisfies(c -> assertThat(c.getComment())
                                .isEqualTo("Since the run of " + GABLE.runStamp() + ": Was not found before.")));
    }

    /** Or whoever waits for an answer would never hear that the finding is gone; whether it is cured nobody knows here. */
    @Test
    void whatIsGoneKeepsItsTopicAndStaysOpenUnlessItConforms() throws IOException, BcfException {
        String before = topic(GABLE);
        CheckResult compared = InventedGable.sound().since(GABLE);
        assertThat(BcfFile.read(bytes(compared, BcfVersion.V2_1)).getTopicFolders())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.getUuid().toString()).isEqualTo(before);
                    assertThat(f.getMarkup().getTopic().getTopicStatus()).isEqualTo("Open");
                    assertThat(f.getMarkup().getComment())
                            .singleElement()
                            .satisfies(c -> assertThat(c.getComment()).contains("Is not in this drop any more"));
                });
    }

    /** Mill Lane has two non-conformances and a concession of different rules, and one rule not assessed. */
    @Test
    void findingsOfOneRuleOrPlaneMakeOneTopicWhichIsOpenAsLongAsOneIs() throws IOException, BcfException {
        CheckResult result = MillLane.result();
        long planes = result.findings().stream()
                .filter(f -> f.outcome() != Outcome.NOT_ASSESSED)
                .map(Finding::plane)
                .distinct()
                .count();
        List<String> titles = titles(result, IssueGrouping.PLANE);
        assertThat(titles).hasSize((int) planes + 1);
        CheckResult later = result.since(InventedGable.drop(1));
        assertThat(titles(later, IssueGrouping.RULE)).anyMatch(t -> t.endsWith("(1)"));
        Set<String> ids = folders(result, IssueGrouping.PLANE);
        assertThat(folders(later, IssueGrouping.PLANE)).containsAll(ids);
    }

    private static List<String> titles(CheckResult result, IssueGrouping grouping) throws IOException, BcfException {
        return BcfFile.read(bytes(result, grouping)).getTopicFolders().stream()
                .map(f -> f.getMarkup().getTopic().getTitle())
                .toList();
    }

    private static Set<String> folders(CheckResult result, IssueGrouping grouping) throws IOException {
        return files(bytes(result, grouping)).keySet();
    }

    private static byte[] bytes(CheckResult result, IssueGrouping grouping) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        IssueFile.write(result, BcfVersion.V2_1, grouping, out);
        return out.toByteArray();
    }

    private static String topic(CheckResult result) throws BcfException, IOException {
        return BcfFile.read(bytes(result, BcfVersion.V2_1)).getTopicFolders().stream()
                .filter(f -> f.getMarkup().getTopic().getTitle().equals(SPAN))
                .map(f -> f.getUuid().toString())
                .findFirst()
                .orElseThrow();
    }

    private static byte[] bytes(CheckResult result, BcfVersion version) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        IssueFile.write(result, version, out);
        return out.toByteArray();
    }

    private static Map<String, String> files(byte[] zipped) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(zipped), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static List<String> names(String xml, String path) {
        return nodes(xml, path).stream().map(n -> ((Element) n).getTagName()).toList();
    }

    private static List<Node> nodes(String xml, String path) {
        return StreamSupport.stream(
                        new JAXPXPathEngine()
                                .selectNodes(path, Input.fromString(xml).build())
                                .spliterator(),
                        false)
                .toList();
    }
}

package runtrue.roof.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Selection;
import runtrue.roof.ReadElement;
import runtrue.roof.halls.SharedFiles;
import runtrue.roof.read.DropElements;
import runtrue.roof.read.UnreadElement;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Lengths of beams and members of real models against the shared reference, which an independent IFC library computed.
 * Members whose axis the reference itself calls doubtful (short, bent or like plates) are left out.
 */
class ReferenceMembersTest {
    /** IfcMemberTypeEnum: bracing, mullions of glazed walls, stringers of stairs, posts. */
    private static final Set<String> CARRY_NOTHING = Set.of("BRACE", "MULLION", "STRINGER", "POST");

    @TestFactory
    Stream<DynamicTest> members_are_as_long_as_in_the_reference() {
        Path models = SharedFiles.folder("models");
        JsonNode reference =
                JsonMapper.shared().readTree(models.resolve("reference.json").toFile());
        List<DynamicTest> tests = new ArrayList<>();
        for (JsonNode file : reference.get("files")) {
            String name = file.get("file").asString();
            if (!file.get("members").isEmpty()) {
                tests.add(DynamicTest.dynamicTest(name, () -> check(models.resolve(name), file.get("members"))));
            }
        }
        return tests.stream();
    }

    private static void check(Path path, JsonNode members) {
        try (StepFile file = StepFile.open(path)) {
            IfcModel model = IfcModel.of(file);
            DropElements elements = DropElements.read(List.of(model), Selection.standard(), Tolerances.standard());
            Map<String, ReadElement> read = new HashMap<>();
            elements.members().forEach(m -> read.put(m.element().globalId(), m));
            Map<String, UnreadElement> unread = new HashMap<>();
            elements.unread().forEach(u -> unread.put(u.element().globalId(), u));
            Set<String> carryNothing = typedAsNoSupport(model);
            List<String> differences = new ArrayList<>();
            int compared = 0;
            int doubtful = 0;
            int unreadMembers = 0;
            int noSupports = 0;
            for (JsonNode member : members) {
                String id = member.get("globalId").asString();
                ReadElement element = read.get(id);
                if (unread.containsKey(id)) {
                    unreadMembers++;
                } else if (element == null && carryNothing.contains(id)) {
                    noSupports++;
                } else if (element == null) {
                    differences.add(member + " was neither read nor reported");
                } else if (member.has("axisDoubtful")) {
                    doubtful++;
                } else {
                    compared++;
                    compare(member, element).ifPresent(differences::add);
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "%-40s members compared %4d  differing %3d  unread %3d  doubtful in the reference %3d  no supports by"
                            + " type %3d%n",
                    path.getFileName(),
                    compared,
                    differences.size(),
                    unreadMembers,
                    doubtful,
                    noSupports);
            differences.forEach(d -> System.out.println("    " + d));
            assertThat(differences).isEmpty();
        }
    }

    /** Members that their type says no sheet rests on are not read at all. */
    private static Set<String> typedAsNoSupport(IfcModel model) {
        Set<String> ids = new HashSet<>();
        for (IfcEntity member : model.all("IfcMember")) {
            if (CARRY_NOTHING.contains(model.predefinedType(member))) {
                ids.add(member.text("GlobalId"));
            }
        }
        return ids;
    }

    private static Optional<String> compare(JsonNode reference, ReadElement element) {
        double expected = reference.get("lengthM").asDouble();
        double length = Member.of(element).map(ReferenceMembersTest::length).orElse(Double.NaN);
        return Math.abs(length - expected) <= 0.01 * expected
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%s %s: reference %.4f m, ours %.4f m",
                        reference.get("globalId").asString(),
                        element.body().representation(),
                        expected,
                        length));
    }

    /** Extent of the corners along the axis. */
    private static double length(Member member) {
        double low = member.corners().stream()
                .mapToDouble(c -> c.dot(member.axis()))
                .min()
                .orElseThrow();
        double high = member.corners().stream()
                .mapToDouble(c -> c.dot(member.axis()))
                .max()
                .orElseThrow();
        return high - low;
    }
}

package runtrue.report.bcf;

import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** The files at the top of an issue file. */
final class RootFiles {
    private RootFiles() {}

    static byte[] version(BcfVersion version) {
        Xml xml = new Xml("Version");
        xml.attribute("VersionId", version.toString());
        if (version == BcfVersion.V2_1) {
            xml.text("DetailedVersion", version.toString());
        }
        return xml.bytes();
    }

    /** The words that topics may use, which 3.0 wants listed. */
    static byte[] extensions(List<Topic> topics, String author) {
        Xml xml = new Xml("Extensions");
        list(xml, "TopicTypes", "TopicType", Stream.of(Topic.NON_CONFORMANCE, Topic.NOT_ASSESSED));
        list(xml, "TopicStatuses", "TopicStatus", Stream.of(Topic.OPEN, Topic.CLOSED));
        list(xml, "Priorities", "Priority", words(topics, t -> Stream.of(t.priority())));
        list(xml, "TopicLabels", "TopicLabel", words(topics, t -> t.labels().stream()));
        list(xml, "Users", "User", Stream.of(author));
        list(xml, "SnippetTypes", "SnippetType", Stream.of());
        list(xml, "Stages", "Stage", Stream.of());
        return xml.bytes();
    }

    private static Stream<String> words(List<Topic> topics, Function<Topic, Stream<String>> words) {
        NavigableSet<String> sorted = new TreeSet<>();
        topics.stream().flatMap(words).forEach(sorted::add);
        return sorted.stream();
    }

    private static void list(Xml xml, String list, String item, Stream<String> words) {
        xml.element(list, () -> words.forEach(w -> xml.text(item, w)));
    }
}

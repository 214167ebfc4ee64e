package runtrue.report.bcf;

import java.util.List;
import runtrue.result.FileInfo;

/** The markup of a topic: what, how grave, where it stands, and which pictures belong to it. */
final class MarkupFile {
    private final Topic topic;
    private final BcfVersion version;
    private final String author;
    private final String stamp;
    private final Xml xml = new Xml("Markup");

    private MarkupFile(Topic topic, BcfVersion version, String author, String stamp) {
        this.topic = topic;
        this.version = version;
        this.author = author;
        this.stamp = stamp;
    }

    /**
     * The document's bytes.
     *
     * @param author of topic and comment
     * @param stamp time of the run, ISO 8601 with zone
     */
    static byte[] of(Topic topic, BcfVersion version, String author, String stamp) {
        MarkupFile file = new MarkupFile(topic, version, author, stamp);
        file.write();
        return file.xml.bytes();
    }

    /** In 3.0 lists have an element of their own, and comments and viewpoints moved into the topic. */
    private void write() {
        boolean lists = version == BcfVersion.V3_0;
        if (!topic.files().isEmpty()) {
            xml.element(
                    "Header", () -> listed(lists, "Files", () -> topic.files().forEach(this::file)));
        }
        xml.element("Topic", () -> {
            xml.attribute("Guid", topic.id())
                    .attribute("TopicType", topic.type())
                    .attribute("TopicStatus", topic.status());
            xml.text("Title", topic.title());
            xml.text("Priority", topic.priority());
            labels(lists);
            xml.text("CreationDate", stamp);
            xml.text("CreationAuthor", author);
            xml.text("ModifiedDate", stamp);
            xml.text("ModifiedAuthor", author);
            xml.text("Description", topic.description());
            if (lists) {
                commentsAndViews(true);
            }
        });
        if (!lists) {
            commentsAndViews(false);
        }
    }

    private void labels(boolean lists) {
        List<String> labels = topic.labels();
        if (!labels.isEmpty()) {
            listed(lists, "Labels", () -> labels.forEach(l -> xml.text(lists ? "Label" : "Labels", l)));
        }
    }

    private void commentsAndViews(boolean lists) {
        if (!topic.comments().isEmpty()) {
            listed(lists, "Comments", () -> topic.comments().forEach(this::comment));
        }
        topic.view()
                .ifPresent(view -> listed(
                        lists,
                        "Viewpoints",
                        () -> xml.element(lists ? "ViewPoint" : "Viewpoints", () -> {
                            xml.attribute("Guid", topic.viewId());
                            xml.text("Viewpoint", Topic.VIEW_FILE);
                            xml.text("Snapshot", Topic.PICTURE);
                        })));
    }

    private void comment(String text) {
        xml.element("Comment", () -> {
            xml.attribute("Guid", NameId.of("comment", topic.id() + " " + text));
            xml.text("Date", stamp);
            xml.text("Author", author);
            xml.text("Comment", text);
        });
    }

    private void file(FileInfo file) {
        xml.element("File", () -> {
            if (ViewpointFile.isGlobalId(file.project())) {
                xml.attribute("IfcProject", file.project());
            }
            xml.attribute("IsExternal", "true");
            xml.text("Filename", file.name());
        });
    }

    private void listed(boolean lists, String name, Xml.Content content) {
        if (lists) {
            xml.element(name, content);
        } else {
            content.write();
        }
    }
}

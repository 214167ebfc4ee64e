package runtrue.report.bcf;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import runtrue.report.scene.Picture;
import runtrue.report.scene.View;
import runtrue.result.CheckResult;

/**
 * An issue file of the BIM Collaboration Format for one drop. A finding has the same topic in every drop, so that a
 * program that has read an earlier one updates it. The same result gives the same bytes on the same Java.
 */
public final class IssueFile {
    /** The earliest time that a zip entry can state; the times that matter stand in the markup. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private IssueFile() {}

    /** Writes the file with a topic for each finding and leaves the stream open. */
    public static void write(CheckResult result, BcfVersion version, OutputStream out) throws IOException {
        write(result, version, IssueGrouping.FINDING, out);
    }

    /** Writes the file and leaves the stream open. */
    public static void write(CheckResult result, BcfVersion version, IssueGrouping grouping, OutputStream out)
            throws IOException {
        String author = "Runtrue " + result.toolVersion();
        List<Topic> topics = Topics.of(result, grouping);
        ZipOutputStream zip = new ZipOutputStream(out);
        add(zip, "bcf.version", RootFiles.version(version));
        if (version == BcfVersion.V3_0) {
            add(zip, "extensions.xml", RootFiles.extensions(topics, author));
        }
        for (Topic topic : topics) {
            String folder = topic.id() + "/";
            add(zip, folder + "markup.bcf", MarkupFile.of(topic, version, author, result.runStamp()));
            if (topic.view().isPresent()) {
                View view = topic.view().get();
                add(zip, folder + Topic.VIEW_FILE, ViewpointFile.of(topic.viewId(), view, version));
                add(zip, folder + Topic.PICTURE, Picture.of(result, view));
            }
        }
        zip.finish();
    }

    private static void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}

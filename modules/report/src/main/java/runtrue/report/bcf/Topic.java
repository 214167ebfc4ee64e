package runtrue.report.bcf;

import java.util.List;
import java.util.Optional;
import runtrue.report.scene.View;
import runtrue.result.FileInfo;

/**
 * One topic.
 *
 * @param id stable from drop to drop
 * @param type {@code Non-conformance} or {@code Not assessed}
 * @param status {@code Open}, or {@code Closed} for what was conceded or conforms now
 * @param files that the finding is about
 * @param view absent when there is no roof to look at
 * @param comments who conceded it and why, and what is different from an earlier drop
 */
record Topic(
        String id,
        String title,
        String type,
        String status,
        String priority,
        List<String> labels,
        String description,
        List<FileInfo> files,
        Optional<View> view,
        List<String> comments) {
    static final String NON_CONFORMANCE = "Non-conformance";
    static final String NOT_ASSESSED = "Not assessed";
    static final String OPEN = "Open";
    static final String CLOSED = "Closed";

    /** The names that 2.1 prescribes for the first viewpoint of a topic; 3.0 lets one choose. */
    static final String VIEW_FILE = "viewpoint.bcfv";

    static final String PICTURE = "snapshot.png";

    Topic {
        labels = List.copyOf(labels);
        files = List.copyOf(files);
        comments = List.copyOf(comments);
    }

    String viewId() {
        return NameId.of("viewpoint", id);
    }
}

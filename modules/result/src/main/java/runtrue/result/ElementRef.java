package runtrue.result;

/**
 * An element of a model file.
 *
 * @param file display name of the file
 * @param stepId instance number in that file
 * @param evidence why it was taken for what it is, for example {@code predefined type PURLIN}; empty where that is plain
 */
public record ElementRef(
        String globalId, String name, String ifcClass, String file, int stepId, String storey, String evidence) {}

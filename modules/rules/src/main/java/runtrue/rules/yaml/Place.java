package runtrue.rules.yaml;

/** Where something stands in a file; line and column start with 1. */
public record Place(String file, int line, int column) implements Comparable<Place> {
    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        int byLine = byFile == 0 ? Integer.compare(line, other.line) : byFile;
        return byLine == 0 ? Integer.compare(column, other.column) : byLine;
    }

    /** As compilers and editors write it: {@code rules.yaml:12:7}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}

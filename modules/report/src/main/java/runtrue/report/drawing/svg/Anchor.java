package runtrue.report.drawing.svg;

/** Which part of a line of text stands at its place. */
public enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String word;

    Anchor(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }
}

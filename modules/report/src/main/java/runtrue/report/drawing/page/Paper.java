package runtrue.report.drawing.page;

import runtrue.report.drawing.place.Box;

/**
 * A landscape page of ISO 216: the plan left, a column with all that is written right, a strip with north and scale below the
 * plan. Millimetres; the left margin is wide enough to file it.
 *
 * @param column width of the column at the right
 */
record Paper(String name, double width, double height, double column) {
    static final Paper A4 = new Paper("A4", 297, 210, 78);
    static final Paper A3 = new Paper("A3", 420, 297, 98);

    static final double STRIP = 16;
    private static final double FILING = 20;
    private static final double MARGIN = 10;
    private static final double GAP = 5;

    Box frame() {
        return new Box(FILING, MARGIN, width - MARGIN, height - MARGIN);
    }

    /** Where the plan goes. */
    Box plan() {
        Box frame = frame();
        return new Box(frame.left(), frame.top(), frame.right() - column - GAP, frame.bottom() - STRIP - GAP);
    }

    Box strip() {
        Box plan = plan();
        return new Box(plan.left(), plan.bottom() + GAP, plan.right(), frame().bottom());
    }

    Box side() {
        Box frame = frame();
        return new Box(frame.right() - column, frame.top(), frame.right(), frame.bottom());
    }
}

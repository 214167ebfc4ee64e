package runtrue.bill;

/** Quantities in whole thousandths of their unit, so that sums are exact whatever their order. */
final class Thousandths {
    private Thousandths() {}

    static long of(double quantity) {
        return Math.round(quantity * 1000);
    }

    static double quantity(long thousandths) {
        return thousandths / 1000.0;
    }
}

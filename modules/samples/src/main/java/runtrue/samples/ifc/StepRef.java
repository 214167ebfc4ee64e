package runtrue.samples.ifc;

/** Number of an instance written before: {@code #12}. */
public record StepRef(int number) {
    @Override
    public String toString() {
        return "#" + number;
    }
}

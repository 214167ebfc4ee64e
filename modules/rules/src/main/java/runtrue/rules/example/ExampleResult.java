package runtrue.rules.example;

/**
 * How an example went.
 *
 * @param got what the rule says: an outcome, or that it does not apply
 * @param fault why the example does not hold, as a sentence; empty when it does
 */
public record ExampleResult(Example example, String got, String fault) {
    public boolean holds() {
        return fault.isEmpty();
    }

    ExampleResult adding(String remark) {
        return new ExampleResult(example, got, fault + remark);
    }
}

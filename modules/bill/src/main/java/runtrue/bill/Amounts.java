package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import runtrue.bill.count.Subject;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.BuildUpItem.Amount;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.Facts;
import runtrue.rules.units.Dimension;

/** Evaluates what a build-up says of quantities, and keeps what is missing. */
final class Amounts {
    private final Evaluator evaluator;
    private final TreeSet<String> missing = new TreeSet<>();

    Amounts(BuildUp buildUp) {
        List<Expression> expressions = new ArrayList<>();
        for (BuildUpItem item : buildUp.items()) {
            item.when().ifPresent(expressions::add);
            Stream.concat(Stream.of(item.quantity()), item.mass().stream())
                    .forEach(a -> a.expression().ifPresent(expressions::add));
        }
        evaluator = new Evaluator(expressions, Map.of(), Map.of());
    }

    /** What could not be worked out, one sentence each. */
    List<String> missing() {
        return List.copyOf(missing);
    }

    void miss(String sentence) {
        missing.add(sentence);
    }

    /** Whether the item is for the subject. */
    boolean applies(BuildUpItem item, Subject subject) {
        if (item.when().isEmpty()) {
            return true;
        }
        Evaluator.Value value = evaluator.evaluate(item.when().get(), subject.facts());
        if (value instanceof Evaluator.Unknown unknown) {
            miss(item, subject.name(), unknown);
            return false;
        }
        return Boolean.TRUE.equals(((Evaluator.Of) value).value());
    }

    /** The item's quantity on one subject, in SI; empty when it is not known. */
    Optional<Double> quantity(BuildUpItem item, Subject subject) {
        Optional<Double> quantity = amount(item, item.quantity(), subject.facts(), subject.name());
        if (quantity.isPresent() && quantity.get() < 0) {
            miss(item.name() + " of " + subject.name() + ": the quantity comes out negative");
            return Optional.empty();
        }
        return quantity;
    }

    /** Kilograms of one of the item's unit; empty when it is not known. */
    Optional<Double> mass(BuildUpItem item, Facts drop) {
        double inSi =
                item.unit().dimension().equals(Dimension.NONE) ? 1 : item.unit().inSi();
        return item.mass().flatMap(m -> amount(item, m, drop, "its mass")).map(perSi -> perSi * inSi);
    }

    private Optional<Double> amount(BuildUpItem item, Amount amount, Facts facts, String of) {
        if (amount.fixed().isPresent()) {
            return amount.fixed().map(q -> q.si());
        }
        Evaluator.Value value = evaluator.evaluate(amount.expression().orElseThrow(), facts);
        if (value instanceof Evaluator.Unknown unknown) {
            miss(item, of, unknown);
            return Optional.empty();
        }
        return Optional.of((Double) ((Evaluator.Of) value).value());
    }

    private void miss(BuildUpItem item, String of, Evaluator.Unknown unknown) {
        miss(item.name() + ", " + of + ": " + String.join("; ", unknown.reasons()));
    }
}

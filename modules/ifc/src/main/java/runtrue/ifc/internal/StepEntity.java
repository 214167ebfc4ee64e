package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.ifc.schema.SchemaClass;
import runtrue.step.StepException;
import runtrue.step.StepInstance;
import runtrue.step.StepValue;

/** An instance that is decoded when its first attribute is read. */
final class StepEntity implements IfcEntity {
    private static final StepValue OMITTED = new StepValue.Omitted();

    private final StepModel model;
    private final int id;
    private final SchemaClass schemaClass;

    /** Two threads may decode the same record at once; both get the same immutable answer. */
    private @Nullable StepInstance decoded;

    StepEntity(StepModel model, int id, SchemaClass schemaClass) {
        this.model = model;
        this.id = id;
        this.schemaClass = schemaClass;
    }

    @Override
    public int id() {
        return id;
    }

    @Override
    public String type() {
        return schemaClass.name();
    }

    @Override
    public boolean isA(String className) {
        return schemaClass.isA(model.schemaTable().nameHere(className));
    }

    @Override
    public IfcModel model() {
        return model;
    }

    @Override
    public StepValue value(String attribute) {
        int index = schemaClass.indexOf(attribute);
        if (index < 0) {
            return OMITTED;
        }
        List<StepValue> attributes = instance().attributes();
        return index < attributes.size() ? attributes.get(index) : OMITTED;
    }

    private StepInstance instance() {
        StepInstance known = decoded;
        if (known == null) {
            known = fromFile(() -> model.file().instance(id));
            decoded = known;
        }
        return known;
    }

    /** What cannot be read in the file is, to callers, an entity that does not say what is needed. */
    private static <T extends @Nullable Object> T fromFile(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (StepException e) {
            throw new IfcException(String.valueOf(e.getMessage()), e);
        }
    }

    @Override
    public boolean has(String attribute) {
        StepValue value = value(attribute);
        return !(value instanceof StepValue.Omitted) && !(value instanceof StepValue.Derived);
    }

    @Override
    public IfcEntity ref(String attribute) {
        return optionalRef(attribute).orElseThrow(() -> problem(attribute, "is missing"));
    }

    @Override
    public Optional<IfcEntity> optionalRef(String attribute) {
        StepValue value = value(attribute);
        if (value instanceof StepValue.Reference reference) {
            return Optional.of(follow(attribute, reference.id()));
        }
        if (has(attribute)) {
            throw problem(attribute, "should refer to one instance");
        }
        return Optional.empty();
    }

    @Override
    public List<IfcEntity> refs(String attribute) {
        int index = schemaClass.indexOf(attribute);
        if (index < 0) {
            return List.of();
        }
        List<IfcEntity> found = new ArrayList<>();
        if (decoded == null) {
            return fromFile(() -> {
                model.file().references(id, index, target -> found.add(follow(attribute, target)));
                return found;
            });
        }
        collect(attribute, value(attribute), found);
        return found;
    }

    private void collect(String attribute, StepValue value, List<IfcEntity> found) {
        if (value instanceof StepValue.Reference reference) {
            found.add(follow(attribute, reference.id()));
        } else if (value instanceof StepValue.ListOf list) {
            list.items().forEach(item -> collect(attribute, item, found));
        } else if (value instanceof StepValue.Typed typed) {
            collect(attribute, typed.value(), found);
        }
    }

    private IfcEntity follow(String attribute, int target) {
        if (!model.file().contains(target)) {
            throw problem(attribute, "refers to #" + target + ", which is not in the file");
        }
        return model.entity(target);
    }

    @Override
    public double real(String attribute) {
        return optionalReal(attribute).orElseThrow(() -> problem(attribute, "should be a number"));
    }

    @Override
    public OptionalDouble optionalReal(String attribute) {
        OptionalDouble number = Values.number(value(attribute));
        if (number.isPresent() && !Double.isFinite(number.getAsDouble())) {
            throw problem(attribute, "is not a finite number");
        }
        return number;
    }

    @Override
    public double[] reals(String attribute) {
        int index = schemaClass.indexOf(attribute);
        if (index < 0) {
            return new double[0];
        }
        double[] numbers = decoded == null ? fromFile(() -> model.file().numbers(id, index)) : null;
        if (numbers == null) {
            numbers = Values.numbers(value(attribute));
        }
        for (double number : numbers) {
            if (!Double.isFinite(number)) {
                throw problem(attribute, "holds a number that is not finite: " + Arrays.toString(numbers));
            }
        }
        return numbers;
    }

    @Override
    public String text(String attribute) {
        return Values.text(value(attribute));
    }

    @Override
    public String enumeration(String attribute) {
        return Values.unwrap(value(attribute)) instanceof StepValue.Enumeration literal ? literal.name() : "";
    }

    @Override
    public String label() {
        return "#" + id + " (" + type() + ")";
    }

    private IfcException problem(String attribute, String what) {
        return new IfcException(model.file().name() + ": " + attribute + " of " + label() + " " + what);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StepEntity entity && entity.id == id && entity.model.equals(model);
    }

    @Override
    public int hashCode() {
        return Objects.hash(System.identityHashCode(model), id);
    }

    @Override
    public String toString() {
        return label();
    }
}

package runtrue.result.build;

import java.util.List;
import runtrue.roof.ReadElement;
import runtrue.roof.health.HealthLine;
import runtrue.roof.stated.StatedValue;

/**
 * What tells how far the rest may be trusted.
 *
 * @param members all that were read as possible supports; those that carry a plane are told of
 * @param stated values that the models state, beside the derived ones
 * @param health what is amiss with the models
 */
public record Trust(List<ReadElement> members, List<StatedValue> stated, List<HealthLine> health) {
    public Trust {
        members = List.copyOf(members);
        stated = List.copyOf(stated);
        health = List.copyOf(health);
    }
}

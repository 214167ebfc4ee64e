package runtrue.result.build;

import java.util.List;
import java.util.Optional;
import runtrue.bill.Bill;
import runtrue.bill.modelled.ModelledCount;
import runtrue.rules.buildup.BuildUp;

/**
 * Quantities, with what they were taken off by and what they are priced with.
 *
 * @param modelled what models count by themselves
 */
public record BillInput(Bill bill, BuildUp buildUp, Optional<RateList> rates, List<ModelledCount> modelled) {
    public BillInput {
        modelled = List.copyOf(modelled);
    }
}

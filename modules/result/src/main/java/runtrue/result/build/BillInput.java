package runtrue.result.build;

import java.util.Optional;
import runtrue.bill.Bill;
import runtrue.rules.buildup.BuildUp;

/** Quantities, with what they were taken off by and what they are priced with. */
public record BillInput(Bill bill, BuildUp buildUp, Optional<RateList> rates) {}

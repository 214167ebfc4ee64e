package runtrue.result;

import java.util.List;

/** Outcomes counted, in total and per rule of the set (also those that met no subject). */
public record Counts(Outcomes total, List<RuleOutcomes> rules) {
    public Counts {
        rules = List.copyOf(rules);
    }

    /** Numbers of judgements; the four never overlap. */
    public record Outcomes(int conforms, int doesNotConform, int notAssessed, int conceded) {
        public int all() {
            return conforms + doesNotConform + notAssessed + conceded;
        }

        /** The number for one outcome. */
        public int of(Outcome outcome) {
            return switch (outcome) {
                case CONFORMS -> conforms;
                case DOES_NOT_CONFORM -> doesNotConform;
                case NOT_ASSESSED -> notAssessed;
                case CONCEDED -> conceded;
            };
        }
    }

    /** Outcomes of one rule. */
    public record RuleOutcomes(String rule, Outcomes outcomes) {}
}

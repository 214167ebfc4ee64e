package runtrue.rules.concede;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.RuleException;
import runtrue.rules.Severity;
import runtrue.rules.concede.ConcessionUse.State;
import runtrue.rules.units.Quantities;

class ConcessionsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 31);

    @TempDir
    Path folder;

    /** A span of 2.40 m where 2.00 m is allowed, or a pitch of 1.5 degrees where 2 are asked for. */
    private static Judgement finding(Outcome outcome, String measured, String comparison) {
        Optional<Quantity> value = measured.isEmpty() ? Optional.empty() : Optional.of(Quantities.parse(measured));
        return new Judgement(
                "internal-span-0a1b2c3d4e",
                "internal-span",
                "Internal span",
                Severity.MAJOR,
                outcome,
                "internal span between lines 4 and 5",
                "P-1",
                List.of(),
                Optional.empty(),
                value,
                value,
                value,
                comparison,
                "system",
                "message",
                "cure",
                outcome == Outcome.NOT_ASSESSED ? "no thickness" : "",
                List.of());
    }

    private List<Concession> load(String text) throws IOException {
        Path file = folder.resolve("concessions.yaml");
        Files.writeString(file, text);
        return Concessions.load(file);
    }

    private List<Concession> one(String more) throws IOException {
        return load("concessions:\n- finding: internal-span-0a1b2c3d4e\n  by: R. Aldous\n  why: RFI 27\n" + more);
    }

    @Test
    void an_accepted_breach_is_conceded_and_says_by_whom_and_why() throws IOException {
        Judgement breach = finding(Outcome.DOES_NOT_CONFORM, "2400 mm", "at most");

        Concessions.Applied applied =
                Concessions.apply(List.of(breach), one("  up_to: 2.45 m\n  until: 2027-03-31\n"), TODAY);

        Judgement conceded = applied.judgements().get(0);
        assertThat(conceded.outcome()).isEqualTo(Outcome.CONCEDED);
        assertThat(conceded.reason()).isEqualTo("R. Aldous: RFI 27 (until 2027-03-31) (up to 2.45 m)");
        assertThat(conceded.measured()).isEqualTo(breach.measured());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            DOES_NOT_CONFORM | 2400 mm | at most  | up_to: 2400 mm                     | HOLDS        | Holds until withdrawn.
            DOES_NOT_CONFORM | 2401 mm | at most  | up_to: 2400 mm                     | EXCEEDED     | it measures 2401 mm now
            DOES_NOT_CONFORM | 1.5 deg | at least | up_to: 1.5 deg                     | HOLDS        | Holds
            DOES_NOT_CONFORM | 1.4 deg | at least | up_to: 1.5 deg                     | EXCEEDED     | Accepted up to 1.5 deg
            DOES_NOT_CONFORM | 2400 mm | at most  | -                                  | UNCLEAR      | Add up_to, for example 2400 mm.
            DOES_NOT_CONFORM | 2400 mm | at most  | up_to: 3 kPa                       | UNCLEAR      | but the finding measures 2400 mm
            DOES_NOT_CONFORM | -       | at most  | up_to: 3 m                         | UNCLEAR      | measures nothing
            DOES_NOT_CONFORM | -       | at most  | -                                  | HOLDS        | Holds
            DOES_NOT_CONFORM | 2400 mm | at most  | {up_to: 3 m, until: 2027-03-30}    | EXPIRED      | Expired on 2027-03-30
            DOES_NOT_CONFORM | 2400 mm | at most  | {up_to: 3 m, until: 2027-03-31}    | HOLDS        | until 2027-03-31
            NOT_ASSESSED     | -       | at most  | up_to: 3 m                         | NOT_ASSESSED | no thickness
            CONFORMS         | 1900 mm | at most  | up_to: 3 m                         | CURED        | Take the concession out
            """)
    void only_what_was_accepted_is_conceded(
            Outcome outcome, String measured, String comparison, String terms, State state, String remark)
            throws IOException {
        String lines = terms == null
                ? ""
                : "  " + terms.replace("{", "").replace("}", "").replace(", ", "\n  ") + "\n";
        Judgement judged = finding(outcome, measured == null ? "" : measured, comparison);

        Concessions.Applied applied = Concessions.apply(List.of(judged), one(lines), TODAY);

        assertThat(applied.uses()).singleElement().satisfies(use -> {
            assertThat(use.state()).isEqualTo(state);
            assertThat(use.remark()).contains(remark);
        });
        assertThat(applied.judgements().get(0).outcome()).isEqualTo(state == State.HOLDS ? Outcome.CONCEDED : outcome);
    }

    @Test
    void a_concession_for_no_finding_is_pointed_out() throws IOException {
        assertThat(Concessions.apply(List.of(), one(""), TODAY).uses())
                .extracting(ConcessionUse::state)
                .containsExactly(State.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {concessions: [{finding: a, by: " ", why: c}]}                  | :1:33:
            {concessions: [{finding: a, by: b}]}                            | :1:16: "why" is missing here
            {concessions: [{finding: a, by: b, why: c, untill: 2027-01-01}]} | unknown key "untill"; did you mean "until"?
            {concessions: [{finding: a, by: b, why: c, until: soon}]}       | :1:51: "soon" is no day
            {concessions: [{finding: a, by: b, why: c, up_to: 3}]}          | "3" has no unit
            {concessions: [{finding: a, by: b, why: c}, {finding: a, by: b, why: d}]} | finding a is accepted already
            """)
    void errors_say_where_and_what(String text, String message) {
        assertThatThrownBy(() -> load(text)).isInstanceOf(RuleException.class).hasMessageContaining(message);
    }
}

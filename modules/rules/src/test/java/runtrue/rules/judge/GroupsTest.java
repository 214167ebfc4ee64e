package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.judge.subject.Subject;

/** Sheets of one plane as they are told of. */
class GroupsTest {
    private static Judged sheet(int number, double length, Outcome outcome) {
        Subject subject = new Subject(
                SubjectKind.SHEET,
                "sheet " + number + " of plane south",
                "P-1",
                List.of(),
                Optional.empty(),
                "sheet|" + number + "|" + length,
                Facts.empty());
        Optional<Quantity> measured = Optional.of(new Quantity(length, "m"));
        Verdict verdict = outcome == Outcome.NOT_ASSESSED
                ? Verdict.notAssessed(measured, "temperature_range is not stated")
                : new Verdict(outcome, measured, measured, Optional.empty(), Optional.empty(), "system", "");
        return new Judged(subject.inSeries("sheet", number), verdict);
    }

    @Test
    void sheets_of_a_hip_that_lack_the_same_setting_are_one_gap() {
        List<Group> groups = Groups.of(List.of(
                sheet(1, 1.2, Outcome.NOT_ASSESSED),
                sheet(2, 2.2, Outcome.NOT_ASSESSED),
                sheet(2, 0.9, Outcome.NOT_ASSESSED),
                sheet(3, 3.2, Outcome.NOT_ASSESSED)));

        assertThat(groups).extracting(Group::name).containsExactly("sheets 1 to 3 of plane south");
    }

    @Test
    void sheets_that_do_not_conform_are_told_by_length() {
        List<Group> groups = Groups.of(List.of(
                sheet(1, 45, Outcome.DOES_NOT_CONFORM),
                sheet(2, 45, Outcome.DOES_NOT_CONFORM),
                sheet(3, 46, Outcome.DOES_NOT_CONFORM)));

        assertThat(groups)
                .extracting(Group::name)
                .containsExactly("sheets 1 to 2 of plane south", "sheet 3 of plane south");
    }
}

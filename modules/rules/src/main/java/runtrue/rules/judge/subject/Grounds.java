package runtrue.rules.judge.subject;

import java.util.List;
import java.util.Optional;
import runtrue.rules.Judgement;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;

/**
 * A judgement with what it was made of, so that it can be explained.
 *
 * @param subject that was judged; of several that are told of together, the worst, whose figures the judgement has
 * @param members all that are told of together
 */
public record Grounds(Judgement judgement, Rule rule, Subject subject, List<Member> members) {
    public Grounds {
        members = List.copyOf(members);
    }

    /** One of those told of together; what was measured may be empty. */
    public record Member(String name, Optional<Quantity> measured) {}

    /** The same with another judgement of it, for example one that somebody accepted. */
    public Grounds judged(Judgement other) {
        return new Grounds(other, rule, subject, members);
    }
}

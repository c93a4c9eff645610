package org.riseandgel.clearance.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * The rule against a second reading of its page, over 100,000 histories that nobody thought of: nobody may do what the second
 * reading forbids, nobody is kept from what it allows, the reasons are the same, and so is what a grant still needs. At the end
 * it is counted that the histories really came into the states that matter.
 */
class SecondOpinionTest {
    private static final int HISTORIES = 100_000;

    /** Some state of the register and how many of a thousand answers have to be about it at least. */
    private enum State {
        CLEARED(120),
        SUPERVISED(30),
        UNDER_18(100),
        SUSPENDED(80),
        REINSTATED(30),
        WITHDRAWN(10),
        EXPIRED(100),
        RENEWED(50),
        CORRECTED(25),
        UNREADABLE(10),
        EVIDENCE_FELL(100),
        RESPIRATOR(30),
        DELTA(100),
        AS_KNOWN_THEN(100),
        GRANTABLE(25);

        private final int inThousand;

        State(int inThousand) {
            this.inThousand = inThousand;
        }
    }

    private static final Map<State, Integer> SEEN = new EnumMap<>(State.class);

    @Property(
            tries = HISTORIES,
            seed = "20270304",
            edgeCases = EdgeCasesMode.NONE,
            generation = GenerationMode.RANDOMIZED)
    void neverClearedWhereASecondReadingSaysNot(@ForAll("numbers") long beginning, @ForAll("moves") List<Long> moves) {
        MadeUpHistory made = new MadeUpHistory(beginning, moves);
        Question question = made.question();
        Instant at = made.when();
        Instant known = made.known(at);
        SecondOpinion second = new SecondOpinion(made.events, known, made.zone, made.born);
        History history = made.history().knownAt(known);
        ClearanceRule rule = new ClearanceRule(history);
        Standing first = rule.standing(question, at);
        SecondOpinion.Opinion opinion = second.ask(question, at);
        assertThat(first.status()).as("%s at %s", question, at).isEqualTo(opinion.status());
        assertThat(first.firstReason()).isEqualTo(opinion.first());
        Proposal proposal = made.proposal();
        Set<Need> unmet = new TreeSet<>(rule.mayGrant(proposal, at).unmet());
        assertThat(unmet).as("%s at %s", proposal, at).isEqualTo(new TreeSet<>(second.missing(proposal, at)));
        count(made, history, question, first, at);
        count(State.AS_KNOWN_THEN, known.isBefore(made.now()));
        count(State.GRANTABLE, unmet.isEmpty());
    }

    @Provide
    Arbitrary<Long> numbers() {
        return Arbitraries.longs().withDistribution(RandomDistribution.uniform());
    }

    @Provide
    Arbitrary<List<Long>> moves() {
        return numbers().list().ofMinSize(1).ofMaxSize(9);
    }

    private static void count(MadeUpHistory made, History history, Question question, Standing standing, Instant at) {
        boolean good = standing.status() != Status.NOT_CLEARED;
        List<Reason> reasons = standing.reasons();
        count(State.CLEARED, standing.isCleared());
        count(State.SUPERVISED, standing.status() == Status.SUPERVISED_ONLY);
        count(State.UNDER_18, history.age(question.person(), at) == Ages.Age.UNDER_18);
        count(State.SUSPENDED, reasons.contains(Reason.SUSPENDED));
        count(
                State.REINSTATED,
                good
                        && !history.about(question.person(), Decision.Reinstated.class, at)
                                .isEmpty());
        count(State.WITHDRAWN, reasons.contains(Reason.WITHDRAWN));
        count(State.EXPIRED, reasons.contains(Reason.EXPIRED));
        count(
                State.RENEWED,
                good
                        && history.about(question.person(), Decision.Granted.class, at).stream()
                                        .filter(f -> f.body().scope().equals(standing.scope()))
                                        .count()
                                > 1);
        count(State.CORRECTED, good && made.hasCorrection());
        count(State.UNREADABLE, reasons.contains(Reason.UNREADABLE));
        count(State.EVIDENCE_FELL, reasons.contains(Reason.EVIDENCE_FELL));
        count(State.RESPIRATOR, reasons.contains(Reason.RESPIRATOR_LAPSED));
        count(State.DELTA, reasons.contains(Reason.DELTA_OVERDUE));
    }

    private static void count(State state, boolean seen) {
        SEEN.merge(state, seen ? 1 : 0, Integer::sum);
    }

    @AfterContainer
    static void theHistoriesCameIntoTheStatesThatMatter() {
        SEEN.forEach((state, times) -> assertThat(times)
                .as("answers about %s in %d histories", state, HISTORIES)
                .isGreaterThanOrEqualTo(HISTORIES / 1000 * state.inThousand));
    }
}

package org.riseandgel.progress;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.practice.AnswerHistory;
import org.riseandgel.practice.PracticeEffects;
import org.riseandgel.practice.PracticeEffects.FirstTries;

/**
 * What a cohort could still do weeks after it began, from first tries while people learned in it. The figures are told of
 * everybody together, and only from {@value #FEWEST} tries on: with fewer they would be chance.
 */
@ApplicationScoped
class CohortEffects {
    static final int FEWEST = 10;

    private static final int PERCENT = 100;

    private final People people;
    private final PracticeEffects effects;

    CohortEffects(People people, PracticeEffects effects) {
        this.people = people;
        this.effects = effects;
    }

    /**
     * What there is to tell of a cohort.
     *
     * @param lines at the beginning, and at two times later
     */
    record Effect(CohortView cohort, List<Line> lines) {
        /** The two times later, of which alone "learned" may be said. */
        public List<Line> later() {
            return lines.stream().filter(line -> line.tries.day() > 0).toList();
        }

        public boolean isEmpty() {
            return lines.stream().allMatch(line -> line.tries.tries() == 0);
        }

        public int fewest() {
            return FEWEST;
        }
    }

    /** First tries at one time, in words. */
    record Line(FirstTries tries) {
        public String when() {
            return switch (tries.day()) {
                case 0 -> "First day";
                case 21 -> "Day 18 to 28";
                default -> "Day 80 to 110";
            };
        }

        /** Whether they are enough to be told. */
        public boolean isTold() {
            return tries.tries() >= FEWEST;
        }

        /** Whether those are enough that have a like one on the first day. */
        public boolean areAlikeTold() {
            return tries.alike().tries() >= FEWEST;
        }

        public String right() {
            return share(tries.right(), tries.tries());
        }

        public String rightBefore() {
            return share(tries.alike().rightBefore(), tries.alike().tries());
        }

        public String rightNow() {
            return share(tries.alike().rightNow(), tries.alike().tries());
        }

        private static String share(int right, int of) {
            return "%d of %d, %d %%".formatted(right, of, Math.round((double) PERCENT * right / of));
        }
    }

    /** The first tries of a cohort; empty when it may not be seen. */
    Optional<Effect> of(Boards.Asker asker, UUID cohort) {
        return people.learnersSeenBy(asker.person(), asker.office(), cohort)
                .map(seen -> new Effect(
                        seen.cohort(),
                        effects.of(spans(cohort)).stream().map(Line::new).toList()));
    }

    private List<AnswerHistory.Span> spans(UUID cohort) {
        return people.learnedIn(cohort).stream()
                .map(span -> new AnswerHistory.Span(span.person(), span.from(), span.until()))
                .toList();
    }
}

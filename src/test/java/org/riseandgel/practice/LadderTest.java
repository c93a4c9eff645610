package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** LX-01 and LX-03: up after two right in a row on a rung, down after two wrong, and a skip for those who can. */
class LadderTest {
    private static Ladder right(Ladder from, Rung... draws) {
        Ladder ladder = from;
        for (Rung drawn : draws) {
            ladder = ladder.afterRight(drawn);
        }
        return ladder;
    }

    private static Ladder wrong(Ladder from, Rung... draws) {
        Ladder ladder = from;
        for (Rung drawn : draws) {
            ladder = ladder.afterWrong(drawn);
        }
        return ladder;
    }

    private static Ladder at(Rung rung) {
        return new Ladder(rung, rung, 0);
    }

    @Test
    void theWayUpLeadsFromTheExampleToTheWholeJob() {
        assertThat(Ladder.FOOT.offered()).isEqualTo(Rung.EXAMPLE);
        Ladder once = right(Ladder.FOOT, Rung.STEPS);
        assertThat(once.offered()).isEqualTo(Rung.STEPS);
        Ladder plan = right(once, Rung.STEPS);
        assertThat(plan.offered()).isEqualTo(Rung.PLAN);
        assertThat(right(plan, Rung.PLAN).offered()).isEqualTo(Rung.PLAN);
        Ladder bare = right(plan, Rung.PLAN, Rung.PLAN);
        assertThat(bare.offered()).isEqualTo(Rung.BARE);
        assertThat(right(bare, Rung.BARE, Rung.BARE).offered()).isEqualTo(Rung.JOB);
    }

    @Test
    void twoWrongInARowLeadDownAsFarAsTheExample() {
        assertThat(wrong(at(Rung.BARE), Rung.BARE).offered()).isEqualTo(Rung.BARE);
        assertThat(wrong(at(Rung.BARE), Rung.BARE, Rung.BARE).offered()).isEqualTo(Rung.PLAN);
        assertThat(wrong(at(Rung.PLAN), Rung.PLAN, Rung.PLAN).offered()).isEqualTo(Rung.STEPS);
        assertThat(wrong(at(Rung.STEPS), Rung.STEPS).offered()).isEqualTo(Rung.STEPS);
        assertThat(wrong(at(Rung.STEPS), Rung.STEPS, Rung.STEPS).offered()).isEqualTo(Rung.EXAMPLE);
    }

    @Test
    void aRowIsBrokenByTheOtherVerdictByHelpAndByAnotherRung() {
        assertThat(right(wrong(right(at(Rung.PLAN), Rung.PLAN), Rung.PLAN), Rung.PLAN)
                        .offered())
                .isEqualTo(Rung.PLAN);
        assertThat(right(right(at(Rung.PLAN), Rung.PLAN).afterHelp(Rung.PLAN), Rung.PLAN)
                        .offered())
                .isEqualTo(Rung.PLAN);
        assertThat(right(at(Rung.PLAN), Rung.STEPS, Rung.PLAN).offered()).isEqualTo(Rung.PLAN);
    }

    @Test
    void whoeverBeginsBareAndIsRightTwiceNeverSeesAnExample() {
        assertThat(right(Ladder.FOOT, Rung.BARE, Rung.BARE).offered()).isEqualTo(Rung.JOB);
    }

    @Test
    void anEasyDrawThatIsRightNeverLeadsDownAndAHardOneThatIsWrongNeverUp() {
        assertThat(right(at(Rung.JOB), Rung.STEPS, Rung.STEPS).offered()).isEqualTo(Rung.JOB);
        assertThat(wrong(Ladder.FOOT, Rung.JOB, Rung.JOB).offered()).isEqualTo(Rung.EXAMPLE);
    }

    @Property
    void oneDrawMovesTheOfferByOneRungAtMostUnlessSomebodySkipped(@ForAll("acts") List<Boolean> acts) {
        Ladder ladder = Ladder.FOOT;
        for (boolean right : acts) {
            Rung drawn = Rung.higher(ladder.offered(), Rung.STEPS);
            Ladder after = right ? ladder.afterRight(drawn) : ladder.afterWrong(drawn);
            assertThat(Math.abs(after.offered().number() - drawn.number())).isLessThanOrEqualTo(1);
            ladder = after;
        }
    }

    @Provide
    Arbitrary<List<Boolean>> acts() {
        return Arbitraries.of(true, false).list().ofMaxSize(60);
    }
}

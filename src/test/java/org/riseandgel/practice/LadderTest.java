package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LadderTest {
    @Test
    void twoRightInARowLeadUpAndTwoWrongLeadDown() {
        assertThat(Ladder.FOOT.afterRight(1).level()).isEqualTo(1);
        Ladder second = Ladder.FOOT.afterRight(1).afterRight(1);
        assertThat(second.level()).isEqualTo(2);
        assertThat(second.afterRight(2).level()).isEqualTo(2);
        assertThat(second.afterRight(2).afterRight(2).level()).isEqualTo(3);
        assertThat(second.afterWrong(2).level()).isEqualTo(2);
        assertThat(second.afterWrong(2).afterWrong(2).level()).isEqualTo(1);
    }

    @Test
    void aRowIsBrokenByTheOtherVerdictAndByHelp() {
        assertThat(Ladder.FOOT.afterRight(1).afterWrong(1).afterRight(1).level())
                .isEqualTo(1);
        assertThat(Ladder.FOOT.afterRight(1).afterHelp(1).afterRight(1).level()).isEqualTo(1);
    }

    @Test
    void aRowIsMadeAtOneLevel() {
        assertThat(Ladder.FOOT.afterRight(1).afterRight(2).level()).isEqualTo(1);
    }

    @Test
    void whoeverStartsBareAndIsRightTwiceNeverSeesTheFirstLevel() {
        Ladder skipped = Ladder.FOOT.afterRight(2).afterRight(2);
        assertThat(skipped.level()).isEqualTo(3);
    }

    @Test
    void theEndsOfTheLadderHold() {
        Ladder top = new Ladder(3, 3, 0);
        assertThat(top.afterRight(3).afterRight(3).level()).isEqualTo(3);
        assertThat(Ladder.FOOT.afterWrong(1).afterWrong(1).level()).isEqualTo(1);
    }

    @Test
    void anEasyDrawThatIsRightNeverLeadsDownAndAHardOneThatIsWrongNeverUp() {
        assertThat(new Ladder(3, 3, 0).afterRight(1).afterRight(1).level()).isEqualTo(3);
        assertThat(Ladder.FOOT.afterWrong(3).afterWrong(3).level()).isEqualTo(1);
    }
}

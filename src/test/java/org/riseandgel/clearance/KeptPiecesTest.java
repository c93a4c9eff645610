package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;

class KeptPiecesTest {
    private static final Instant MORNING = Instant.parse("2027-03-04T09:00:00.000001Z");
    private static final Instant NIGHT = Instant.parse("2027-03-04T23:00:00Z");

    private static final Standing CLEARED = new Standing(
            Status.SUPERVISED_ONLY,
            List.of(),
            new UUID(1, 2),
            new UUID(3, 4),
            LocalDate.of(2028, 2, 29),
            NIGHT,
            true,
            new UUID(5, 6));
    private static final Standing RUN_OUT = new Standing(
            Status.NOT_CLEARED,
            List.of(Reason.SUSPENDED, Reason.EXPIRED),
            new UUID(1, 2),
            new UUID(3, 4),
            LocalDate.of(2028, 2, 29),
            null,
            false,
            null);
    private static final String TEXT = KeptPieces.write(
            List.of(new ClearanceRule.Piece(MORNING, CLEARED), new ClearanceRule.Piece(NIGHT, RUN_OUT)));

    @Test
    void eachAnswerHoldsFromItsBeginningOn() {
        assertThat(KeptPieces.at(TEXT, MORNING.minusNanos(1000))).isEmpty();
        assertThat(KeptPieces.at(TEXT, MORNING)).contains(CLEARED);
        assertThat(KeptPieces.at(TEXT, NIGHT.minusNanos(1))).contains(CLEARED);
        assertThat(KeptPieces.at(TEXT, NIGHT)).contains(RUN_OUT);
        assertThat(KeptPieces.at(TEXT, NIGHT.plusSeconds(1_000_000))).contains(RUN_OUT);
    }

    @Test
    void anAnswerWithoutScopeIsKeptToo() {
        Standing none =
                new Standing(Status.NOT_CLEARED, List.of(Reason.NO_SUCH_SCOPE), null, null, null, null, false, null);
        assertThat(KeptPieces.at(KeptPieces.write(List.of(new ClearanceRule.Piece(MORNING, none))), NIGHT))
                .contains(none);
    }

    @Test
    void whatWasNotWrittenHereIsNoAnswer() {
        assertThat(KeptPieces.at("", NIGHT)).isEmpty();
        assertThat(KeptPieces.at("CLEARED", NIGHT)).isEmpty();
        for (String broken : List.of(
                TEXT.replace("NOT_CLEARED", "CLEAR"),
                TEXT.replace("SUSPENDED,", "SUSPENDED,,"),
                TEXT + " more",
                TEXT.replace("2028-02-29", "2028-02-30"))) {
            assertThatThrownBy(() -> KeptPieces.at(broken, NIGHT)).isInstanceOf(RuntimeException.class);
        }
    }
}

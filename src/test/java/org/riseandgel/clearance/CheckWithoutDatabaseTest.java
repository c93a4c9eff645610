package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.sql.NoDatabase;

class CheckWithoutDatabaseTest {
    @Test
    void cr10_cr23_aDatabaseThatDoesNotAnswerClearsNobody() {
        RegisterCheck check =
                new RegisterCheck(new Answers(NoDatabase.sql()), null, null, NoDatabase.sql(), Clock.systemUTC());
        Place place = new Place(
                new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"), Form.DISPERSION, "Room 1");
        RegisterCheck.CheckAnswer answer = check.ask(null, UUID.randomUUID(), place, Task.DOSE);
        assertThat(answer.status()).isEqualTo(Status.NOT_CLEARED);
        assertThat(answer.reason()).isEqualTo(Reason.UNREADABLE);
        assertThat(answer.words()).contains("cannot be read");
    }
}

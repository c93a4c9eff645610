package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Task;

/** CR-10: a register that cannot be asked clears nobody for the bench. */
class BenchGateWithoutRegisterTest {
    @Test
    void cr10_theAnswerIsNo() {
        BenchGate gate = new BenchGate(null, null, null);
        BenchGate.Told told = gate.ask(UUID.randomUUID(), Form.DISPERSION, Set.of(Task.WEIGH));
        assertThat(told.isNo()).isTrue();
        assertThat(told.why()).isEqualTo("The register cannot be read now, so nobody is cleared.");
        assertThat(gate.whoMay(Form.DISPERSION, Set.of(Task.WEIGH))).isEmpty();
    }
}

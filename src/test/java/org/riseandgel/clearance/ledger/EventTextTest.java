package org.riseandgel.clearance.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Keeping;
import org.riseandgel.clearance.rule.Trigger;

class EventTextTest {
    private static final Instant MORNING = Instant.parse("2027-03-04T09:00:00Z");
    private static final UUID SOMEBODY = new UUID(1, 2);

    @TestFactory
    List<DynamicTest> everyKindIsReadBackAsItWasWritten() {
        return Sample.all().stream()
                .map(said -> DynamicTest.dynamicTest(EventText.kind(said), () -> {
                    String text = EventText.write(new EventText.Content(SOMEBODY, MORNING, said));
                    EventText.Content read = EventText.read(text);
                    assertThat(read.said()).isEqualTo(said);
                    assertThat(read.effective()).isEqualTo(MORNING);
                    assertThat(read.by()).isEqualTo(SOMEBODY);
                    assertThat(EventText.write(read)).as("the same text again").isEqualTo(text);
                }))
                .toList();
    }

    @Test
    void theDatabaseFindsKindAndPersonWhereItLooksForThem() {
        for (Body said : Sample.all()) {
            String text = EventText.write(new EventText.Content(null, MORNING, said));
            assertThat(text).contains("\"type\":\"" + EventText.kind(said) + "\"");
            String person =
                    said.subject().map(one -> "\"person\":\"" + one + "\"").orElse("");
            assertThat(text).contains(person);
        }
    }

    @Test
    void setsComeInOrder() {
        Keeping.Purged one = new Keeping.Purged(3, Sample.numbers(10, 9, 2), "x");
        assertThat(EventText.canonical(one)).contains("\"numbers\":[2,9,10]");
    }

    @Test
    void whatIsMissingUnknownOrWrongIsNotRead() {
        String text = EventText.write(new EventText.Content(
                null, MORNING, new Decision.Suspended(SOMEBODY, null, SOMEBODY, Trigger.INCIDENT, null)));
        assertThat(EventText.read(text).said()).isInstanceOf(Decision.Suspended.class);
        for (String broken : List.of(
                text.replace("suspended", "suspend"),
                text.replace("\"scope\":null,", ""),
                text.replace("\"scope\":null", "\"scope\":null,\"more\":1"),
                text.replace("INCIDENT", "ACCIDENT"),
                text.replace("2027-03-04T09:00:00Z", "yesterday"),
                text + "{}",
                "null",
                "{}")) {
            assertThat(broken).isNotEqualTo(text);
            assertThatThrownBy(() -> EventText.read(broken)).as(broken).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void everyIdOfALineIsFound() {
        Decision.Withdrawn said = new Decision.Withdrawn(SOMEBODY, new UUID(3, 4), new UUID(5, 6), true, null);
        assertThat(EventText.ids(said)).containsExactlyInAnyOrder(SOMEBODY, new UUID(3, 4), new UUID(5, 6));
    }
}

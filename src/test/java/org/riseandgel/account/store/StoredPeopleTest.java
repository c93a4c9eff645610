package org.riseandgel.account.store;

import static org.assertj.core.api.Assertions.assertThat;

import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.CountedStatements;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;

@QuarkusTest
class StoredPeopleTest {
    private static final Instant MORNING = Instant.parse("2027-05-03T07:00:00Z");

    @Inject
    PersonRepository persons;

    @Inject
    CohortMemberRepository members;

    @Inject
    AgroalDataSource dataSource;

    UUID id;

    @BeforeEach
    void addPerson() {
        id = UUID.randomUUID();
        PersonEntity person = new PersonEntity(id, "stored-" + id.toString().substring(0, 8), "50!_", MORNING, null);
        person.takePassword("first hash");
        person.haveRoles(List.of(Roles.APPRENTICE, Roles.SAFETY_LEAD));
        QuarkusTransaction.requiringNew().run(() -> persons.persist(person));
    }

    /** Other tests find nobody here who can sign in. */
    @AfterEach
    void shutAccount() {
        QuarkusTransaction.requiringNew().run(() -> persons.get(id).disable(MORNING));
    }

    @Test
    void twoActsAtOnceBothStay() {
        QuarkusTransaction.requiringNew().run(() -> {
            PersonEntity inTheOffice = persons.get(id);
            QuarkusTransaction.requiringNew().run(() -> persons.get(id).renewHash("second hash"));
            inTheOffice.disable(MORNING);
        });
        PersonEntity after = read();
        assertThat(after.passwordHash()).isEqualTo("second hash");
        assertThat(after.disabledAt()).isEqualTo(MORNING);
    }

    @Test
    void rolesAreAddedAndRemovedAndNeverUpdated() {
        CountedStatements counted = CountedStatements.of(dataSource);
        QuarkusTransaction.requiringNew()
                .run(() -> persons.hold(id).haveRoles(List.of(Roles.INSTRUCTOR, Roles.SAFETY_LEAD)));
        assertThat(counted.taken())
                .filteredOn(statement -> statement.contains("person_role") && !statement.startsWith("select"))
                .extracting(statement -> statement.split(" ")[0])
                .containsExactlyInAnyOrder("delete", "insert");
        assertThat(read().roles()).containsExactlyInAnyOrder(Roles.INSTRUCTOR, Roles.SAFETY_LEAD);
    }

    @Test
    void aSearchTakesEveryLetterAsItIs() {
        assertThat(found("50!_")).contains(id);
        assertThat(found("50_")).doesNotContain(id);
        assertThat(found("%!")).doesNotContain(id);
        assertThat(found("0!")).contains(id);
    }

    @Test
    void oneJoinsAndLeavesOnce() {
        assertThat(join()).isTrue();
        assertThat(join()).isFalse();
        assertThat(leave(MORNING.minusSeconds(1))).isTrue();
        assertThat(leave(MORNING)).isFalse();
        assertThat(join()).as("again, later").isTrue();
        assertThat(leave(MORNING)).isTrue();
    }

    private boolean join() {
        return QuarkusTransaction.requiringNew()
                .call(() -> members.join(DemoPeople.SECOND_COHORT, id, "learns", MORNING));
    }

    private boolean leave(Instant at) {
        return QuarkusTransaction.requiringNew().call(() -> members.leave(DemoPeople.SECOND_COHORT, id, "learns", at));
    }

    private List<UUID> found(String text) {
        return persons.search(text, Roles.SAFETY_LEAD, "on", 100).stream()
                .map(PersonEntity::id)
                .toList();
    }

    private PersonEntity read() {
        return QuarkusTransaction.requiringNew()
                .call(() -> persons.withRoles(id).orElseThrow());
    }
}

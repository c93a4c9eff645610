package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Task;

/** What the database itself refuses, whoever asks. */
@QuarkusTest
class RegisterDatabaseTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    @Inject
    School school;

    @Inject
    Ledger ledger;

    @Inject
    Decisions decisions;

    @Inject
    EvidenceDesk evidence;

    @Inject
    PersonRecord records;

    @Inject
    RegisterCheck check;

    @Inject
    RegisterBook book;

    @Inject
    AgroalDataSource dataSource;

    @Inject
    Config config;

    @TestFactory
    List<DynamicTest> cr13_theApplicationsLoginChangesNothing() {
        return List.of(
                        "UPDATE register_event SET content = content",
                        "UPDATE register_event SET recorded = now() WHERE number = 1",
                        "DELETE FROM register_event",
                        "TRUNCATE register_event",
                        "UPDATE register_note SET words = 'other'",
                        "DELETE FROM register_note",
                        "UPDATE birth_date SET born = born",
                        "SELECT born FROM birth_date",
                        "DELETE FROM birth_date",
                        "UPDATE sds_file SET name = name",
                        "DELETE FROM sds_file",
                        "UPDATE register_check SET status = 'CLEARED'",
                        "DELETE FROM register_check",
                        "ALTER TABLE register_event DISABLE TRIGGER ALL",
                        "DROP TABLE register_event")
                .stream()
                .map(statement ->
                        DynamicTest.dynamicTest(statement, () -> assertThatThrownBy(() -> asApplication(statement))
                                .isInstanceOfSatisfying(SQLException.class, refused -> assertThat(refused.getSQLState())
                                        .as(refused.getMessage())
                                        .isEqualTo("42501"))))
                .toList();
    }

    @TestFactory
    List<DynamicTest> cr13_theOwnerChangesNothingEither() {
        return List.of(
                        "UPDATE register_event SET recorded = now() WHERE number = 1",
                        "UPDATE register_event SET content = NULL, salt = NULL, effective = NULL WHERE number = 1",
                        "DELETE FROM register_event WHERE number = 1",
                        "UPDATE register_note SET words = 'other'",
                        "DELETE FROM sds_file")
                .stream()
                .map(statement -> DynamicTest.dynamicTest(statement, () -> assertThatThrownBy(() -> asOwner(statement))
                        .isInstanceOf(SQLException.class)
                        .hasMessageContaining("the register is only added to")))
                .toList();
    }

    /** CR-17 in the schema: no table has a place for anything about health, and for a date of birth there is one. */
    @Test
    void cr17_noColumnIsForHealthAndOneIsForDatesOfBirth() throws SQLException {
        List<String> columns = new ArrayList<>();
        try (Connection connection = dataSource.getConnection();
                Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(
                        "SELECT table_name || '.' || column_name AS name FROM information_schema.columns"
                                + " WHERE table_schema = current_schema()")) {
            while (found.next()) {
                columns.add(found.getString("name"));
            }
        }
        assertThat(columns).hasSizeGreaterThan(100);
        assertThat(columns)
                .filteredOn(name -> name.matches(
                        ".*(health|medic|doctor|diagnos|disab|illness|allerg|pregnan|nursing|gender|sex|blood).*"))
                .isSubsetOf("account.disabled_at", "person.disabled_at");
        assertThat(columns).filteredOn(name -> name.contains("born")).containsExactly("birth_date.born");
    }

    @Test
    void cr13_evenWhileErasingOnlyTheWholeContentOfALineMayGo() {
        assertThatThrownBy(() -> asOwner(
                        "SET LOCAL riseandgel.erasing = 'on'",
                        "UPDATE register_event SET content = replace(content, '2', '3') WHERE number = 1"))
                .hasMessageContaining("the register is only added to");
    }

    @Test
    void cr04_aGrantByTheObserverIsRefusedByTheDatabase() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        for (UUID one : List.of(cast.learner(), cast.observer(), cast.trainer())) {
            assertThatThrownBy(() -> addGrant(cast, one))
                    .rootCause()
                    .hasMessageMatching("(?s).*(nobody decides about themselves|trained or observed this learner).*");
        }
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew()
                        .call(() -> ledger.add(
                                cast.observer(),
                                school.now(),
                                new Decision.Reinstated(
                                        cast.learner(),
                                        cast.scope().id(),
                                        cast.observer(),
                                        Set.of(),
                                        "policy",
                                        null,
                                        null))))
                .rootCause()
                .hasMessageContaining("trained or observed this learner");
        // The same line by somebody who took no part is taken: what was refused above was the part, not the line.
        QuarkusTransaction.begin();
        addGrantNow(cast, cast.decider(), school.now());
        QuarkusTransaction.rollback();
    }

    @Test
    void cr14_aLineThatDoesNotBelongIsRefusedByTheDatabase() {
        school.cast(SOME);
        for (String change : List.of(
                "number + 2, gen_random_uuid(), effective, recorded, content, salt, content_hash, hash, hash",
                "number + 1, gen_random_uuid(), effective, recorded, content, salt, content_hash, previous, hash",
                "number + 1, gen_random_uuid(), effective, recorded, content, salt, content_hash, hash, hash",
                "number + 1, gen_random_uuid(), effective, recorded - interval '1 day', content, salt, content_hash,"
                        + " hash, hash")) {
            assertThatThrownBy(() -> asApplication("INSERT INTO register_event"
                            + " (number, id, effective, recorded, content, salt, content_hash, previous, hash) SELECT "
                            + change + " FROM register_event ORDER BY number DESC LIMIT 1"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageMatching("(?s).*(does not follow|is not sealed rightly|register_event_times).*");
        }
    }

    @Test
    void cr02_ofTwoGrantsAtOneMomentOneWinsAndBothAreOnRecord() throws Exception {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        UUID other = school.person(org.riseandgel.account.Roles.SAFETY_LEAD);
        school.qualify(other, org.riseandgel.clearance.rule.Act.DECIDE);
        List<Decisions.Outcome> outcomes = atOnce(List.of(
                () -> decisions.grant(
                        cast.decider(), cast.learner(), cast.scope().id(), null),
                () -> decisions.grant(other, cast.learner(), cast.scope().id(), null)));
        assertThat(outcomes).filteredOn(Decisions.Outcome::given).hasSize(1);
        assertThat(records.of(cast.learner()))
                .extracting(PersonRecord.RecordLine::kind)
                .startsWith("grant-refused", "granted");
        assertThat(book.verify().findings()).isEmpty();
    }

    @Test
    void cr14_linesAddedAtOnceAllStandInOneChain() throws Exception {
        Cast cast = school.cleared(SOME);
        List<Callable<UUID>> many = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            many.add(() -> handle(cast));
        }
        assertThat(atOnce(many)).doesNotContainNull().doesNotHaveDuplicates();
        assertThat(book.verify().findings()).isEmpty();
    }

    @Test
    void cr10_aLineThatWasTamperedWithClearsNobodyWhomItConcerns() throws SQLException {
        Cast cast = school.cleared(SOME);
        Place place = Place.of(cast.scope());
        try (Connection owner = owner();
                Statement statement = owner.createStatement()) {
            String where = " WHERE person_id = '" + cast.learner() + "' AND kind = 'sds-read'";
            statement.execute("ALTER TABLE register_event DISABLE TRIGGER register_event_kept");
            statement.execute(
                    "UPDATE register_event SET content = replace(content, '\"by\":\"', '\"by\":\"f') " + where);
            try {
                // The kept answer is gone with any new line; without one it would be taken for what it was.
                evidence.fitForTask(cast.trainer(), cast.learner(), true, "The school's doctor", null);
                assertThat(check.ask(null, cast.learner(), place, Task.CLEAN).reason())
                        .isEqualTo(Reason.UNREADABLE);
                assertThat(book.verify().findings()).isNotEmpty();
            } finally {
                statement.execute(
                        "UPDATE register_event SET content = replace(content, '\"by\":\"f', '\"by\":\"') " + where);
                statement.execute("ALTER TABLE register_event ENABLE TRIGGER register_event_kept");
            }
        }
        assertThat(check.ask(null, cast.learner(), place, Task.CLEAN).isYes()).isTrue();
        assertThat(book.verify().findings()).isEmpty();
    }

    private UUID handle(Cast cast) {
        return QuarkusTransaction.requiringNew().call(() -> ledger.add(
                        cast.trainer(),
                        school.now().minusSeconds(1),
                        new Evidence.Handled(cast.learner(), cast.scope().id(), Task.CLEAN))
                .id());
    }

    private void addGrant(Cast cast, UUID decider) {
        QuarkusTransaction.requiringNew().run(() -> addGrantNow(cast, decider, school.now()));
    }

    private void addGrantNow(Cast cast, UUID decider, Instant at) {
        ledger.add(
                decider,
                at,
                new Decision.Granted(
                        cast.learner(),
                        cast.scope().id(),
                        decider,
                        Set.of(),
                        java.time.LocalDate.ofInstant(at, java.time.ZoneOffset.UTC),
                        cast.revision(),
                        "pool",
                        "policy",
                        false,
                        null,
                        null));
    }

    private void asApplication(String statement) throws SQLException {
        try (Connection connection = dataSource.getConnection();
                Statement open = connection.createStatement()) {
            open.execute(statement);
        }
    }

    private void asOwner(String... statements) throws SQLException {
        try (Connection connection = owner();
                Statement open = connection.createStatement()) {
            connection.setAutoCommit(false);
            for (String statement : statements) {
                open.execute(statement);
            }
            connection.rollback();
        }
    }

    private Connection owner() throws SQLException {
        return DriverManager.getConnection(
                config.getValue("quarkus.flyway.jdbc-url", String.class),
                config.getValue("quarkus.flyway.username", String.class),
                config.getValue("quarkus.flyway.password", String.class));
    }

    private static <T> List<T> atOnce(List<Callable<T>> works) throws Exception {
        CyclicBarrier start = new CyclicBarrier(works.size());
        ExecutorService threads = Executors.newFixedThreadPool(works.size());
        try {
            List<Future<T>> running = new ArrayList<>();
            for (Callable<T> work : works) {
                running.add(threads.submit(() -> {
                    start.await();
                    return work.call();
                }));
            }
            List<T> done = new ArrayList<>();
            for (Future<T> one : running) {
                done.add(one.get());
            }
            return done;
        } finally {
            threads.shutdown();
        }
    }
}

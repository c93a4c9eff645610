package org.riseandgel.practice;

import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.platform.sql.Sql;

/** Somebody who has not begun, in the cohort of the demo's instructor. */
record Newcomer(UUID id, TestPeople.Added added) {
    /** One to whom only the first stage is open. */
    static Newcomer in(Sql sql) {
        TestPeople.Added added = TestPeople.settled("apprentice");
        UUID id = UUID.fromString(added.id());
        sql.change(
                "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, 'learns',"
                        + " now())",
                UUID.randomUUID(),
                DemoPeople.FIRST_COHORT,
                id);
        return new Newcomer(id, added);
    }

    /** One to whom the stage was opened by hand. */
    static Newcomer at(Sql sql, String stage) {
        Newcomer newcomer = in(sql);
        sql.change(
                """
                INSERT INTO stage_opened (person_id, stage, opened_by, reason, opened_at)
                VALUES (?, ?, ?, 'for this test', now())""",
                newcomer.id,
                stage,
                DemoPeople.INSTRUCTOR);
        return newcomer;
    }

    /** The newcomer signed in anew; a day on a moved clock ends a sign-in. */
    Learner learner(DrawStore store, Drawings drawings) {
        return new Learner(id, TestPeople.signIn(added), store, drawings);
    }
}

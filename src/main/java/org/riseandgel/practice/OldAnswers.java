package org.riseandgel.practice;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.HeldPeople;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/**
 * Answers whose time is over become counts: how often which verdict came, by exercise and month. Standings are kept up with
 * each answer and stay as they are; answers of people on whom a legal hold lies stay too.
 */
@ApplicationScoped
class OldAnswers {
    private final List<HeldPeople> holds;
    private final AnswerSettings settings;
    private final SchoolSettings school;
    private final AuditLog audit;
    private final Sql sql;
    private final Clock clock;

    OldAnswers(
            @All List<HeldPeople> holds,
            AnswerSettings settings,
            SchoolSettings school,
            AuditLog audit,
            Sql sql,
            Clock clock) {
        this.holds = holds;
        this.settings = settings;
        this.school = school;
        this.audit = audit;
        this.sql = sql;
        this.clock = clock;
    }

    /**
     * What could become counts.
     *
     * @param before answers to what was drawn before this day
     * @param answers how many there are, without those that are held
     */
    record Due(int years, LocalDate before, int answers) {}

    /** What could become counts today. */
    Due due() {
        return new Due(
                years(),
                firstDayKept(),
                sql.first(
                                """
                                SELECT count(*) AS answers FROM answer a JOIN draw d ON d.id = a.draw_id
                                WHERE d.drawn_at < ? AND d.person_id <> ALL (?::uuid[])""",
                                row -> row.number("answers"),
                                until(),
                                held())
                        .orElse(0));
    }

    /** Turns them into counts; that it was done, and how many they were, is written down. */
    @Transactional
    int purge(UUID actor) {
        int erased = sql.list(
                        "SELECT purge_answers(?, ?::uuid[]) AS answers", row -> row.number("answers"), until(), held())
                .get(0);
        audit.note(
                actor, "answers-purged", "practice", "%d answers, drawn before %s".formatted(erased, firstDayKept()));
        return erased;
    }

    private int years() {
        return Math.max(1, settings.keepYears());
    }

    private LocalDate firstDayKept() {
        return LocalDate.ofInstant(clock.instant(), school.zone()).minusYears(years());
    }

    private Instant until() {
        return firstDayKept().atStartOfDay(school.zone()).toInstant();
    }

    private String[] held() {
        return holds.stream()
                .flatMap(one -> one.held().stream())
                .map(UUID::toString)
                .toArray(String[]::new);
    }
}

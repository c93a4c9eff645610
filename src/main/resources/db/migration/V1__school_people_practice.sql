-- The owner role runs this; the application connects as ${app_role}, which gets only the rights granted at the end.

CREATE TABLE school (
    id            smallint    NOT NULL DEFAULT 1,
    name          text        NOT NULL,
    zone          text        NOT NULL,
    decimal_mark  text        NOT NULL,
    emergency     text        NOT NULL DEFAULT '',
    demo          boolean     NOT NULL DEFAULT false,
    created_at    timestamptz NOT NULL,
    CONSTRAINT school_pk PRIMARY KEY (id),
    CONSTRAINT school_only_one CHECK (id = 1),
    CONSTRAINT school_name_length CHECK (char_length(name) BETWEEN 1 AND 120),
    CONSTRAINT school_decimal_mark_known CHECK (decimal_mark IN ('POINT', 'COMMA'))
);

CREATE TABLE person (
    id              uuid        NOT NULL,
    sign_in_name    text        NOT NULL,
    display_name    text        NOT NULL,
    password_hash   text        NOT NULL,
    must_change     boolean     NOT NULL DEFAULT false,
    one_time_until  timestamptz,
    disabled_at     timestamptz,
    created_at      timestamptz NOT NULL,
    created_by      uuid,
    CONSTRAINT person_pk PRIMARY KEY (id),
    CONSTRAINT person_sign_in_name_shape CHECK (sign_in_name ~ '^[a-z0-9][a-z0-9._-]{1,39}$'),
    CONSTRAINT person_display_name_length CHECK (char_length(display_name) BETWEEN 1 AND 80),
    CONSTRAINT person_created_by_fk FOREIGN KEY (created_by) REFERENCES person (id)
);
CREATE UNIQUE INDEX person_sign_in_name_once ON person (sign_in_name);

CREATE TABLE person_role (
    person_id uuid NOT NULL,
    role      text NOT NULL,
    CONSTRAINT person_role_pk PRIMARY KEY (person_id, role),
    CONSTRAINT person_role_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT person_role_known CHECK (role IN ('apprentice', 'instructor', 'safety-lead', 'office'))
);

CREATE TABLE cohort (
    id         uuid        NOT NULL,
    name       text        NOT NULL,
    created_at timestamptz NOT NULL,
    closed_at  timestamptz,
    CONSTRAINT cohort_pk PRIMARY KEY (id),
    CONSTRAINT cohort_name_length CHECK (char_length(name) BETWEEN 1 AND 80)
);
CREATE UNIQUE INDEX cohort_name_once ON cohort (lower(name));

-- Membership is a span, so that history stays with the cohort it was earned in.
CREATE TABLE cohort_member (
    id         uuid        NOT NULL,
    cohort_id  uuid        NOT NULL,
    person_id  uuid        NOT NULL,
    part       text        NOT NULL,
    joined_at  timestamptz NOT NULL,
    left_at    timestamptz,
    CONSTRAINT cohort_member_pk PRIMARY KEY (id),
    CONSTRAINT cohort_member_cohort_fk FOREIGN KEY (cohort_id) REFERENCES cohort (id),
    CONSTRAINT cohort_member_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT cohort_member_part_known CHECK (part IN ('learns', 'teaches')),
    CONSTRAINT cohort_member_span CHECK (left_at IS NULL OR left_at >= joined_at)
);
CREATE UNIQUE INDEX cohort_member_once ON cohort_member (cohort_id, person_id, part) WHERE left_at IS NULL;
CREATE INDEX cohort_member_by_person ON cohort_member (person_id) WHERE left_at IS NULL;

-- The cookie carries a random id; only its SHA-256 is kept here, so a copy of this table opens no door.
CREATE TABLE sign_in (
    id_hash      bytea       NOT NULL,
    public_id    uuid        NOT NULL,
    person_id    uuid        NOT NULL,
    created_at   timestamptz NOT NULL,
    last_seen_at timestamptz NOT NULL,
    ends_at      timestamptz NOT NULL,
    ended_at     timestamptz,
    end_reason   text,
    address      text        NOT NULL,
    browser      text        NOT NULL,
    CONSTRAINT sign_in_pk PRIMARY KEY (id_hash),
    CONSTRAINT sign_in_public_id_once UNIQUE (public_id),
    CONSTRAINT sign_in_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT sign_in_end_reason_known CHECK (end_reason IN
        ('signed-out', 'ended-elsewhere', 'disabled', 'password-changed', 'role-changed', 'idle', 'absolute'))
);
CREATE INDEX sign_in_by_person ON sign_in (person_id) WHERE ended_at IS NULL;

-- Failed tries per account and per address; a wait that grows, never a lock-out.
CREATE TABLE sign_in_failure (
    subject      text        NOT NULL,
    failures     integer     NOT NULL,
    last_at      timestamptz NOT NULL,
    CONSTRAINT sign_in_failure_pk PRIMARY KEY (subject),
    CONSTRAINT sign_in_failure_count CHECK (failures >= 0)
);
CREATE INDEX sign_in_failure_by_time ON sign_in_failure (last_at);

-- Who did what to whom; the application may add and read, never change.
CREATE TABLE audit_entry (
    id       uuid        NOT NULL,
    at       timestamptz NOT NULL,
    actor    uuid,
    action   text        NOT NULL,
    subject  text        NOT NULL,
    detail   text        NOT NULL DEFAULT '',
    address  text        NOT NULL DEFAULT '',
    CONSTRAINT audit_entry_pk PRIMARY KEY (id)
);
CREATE INDEX audit_entry_by_time ON audit_entry (at);
CREATE INDEX audit_entry_by_subject ON audit_entry (subject, at);

-- The text of every exercise version that was ever drawn, so that a draw can be graded and explained for ever.
CREATE TABLE exercise_version (
    exercise_id text        NOT NULL,
    version     text        NOT NULL,
    source_text text        NOT NULL,
    first_used  timestamptz NOT NULL,
    CONSTRAINT exercise_version_pk PRIMARY KEY (exercise_id, version)
);

CREATE TABLE draw (
    id          uuid        NOT NULL,
    person_id   uuid        NOT NULL,
    exercise_id text        NOT NULL,
    version     text        NOT NULL,
    skill       text        NOT NULL,
    level       smallint    NOT NULL,
    seed        bigint      NOT NULL,
    drawn_at    timestamptz NOT NULL,
    hints_shown smallint    NOT NULL DEFAULT 0,
    finished_at timestamptz,
    CONSTRAINT draw_pk PRIMARY KEY (id),
    CONSTRAINT draw_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT draw_version_fk FOREIGN KEY (exercise_id, version) REFERENCES exercise_version (exercise_id, version),
    CONSTRAINT draw_level_known CHECK (level BETWEEN 1 AND 3),
    CONSTRAINT draw_hints_counted CHECK (hints_shown >= 0)
);
CREATE INDEX draw_by_person ON draw (person_id, skill, drawn_at DESC);
-- Nobody draws again and again until the numbers are easy: an open draw is taken up again.
CREATE UNIQUE INDEX draw_open_once ON draw (person_id, skill, level) WHERE finished_at IS NULL;

-- One row per part of a draw, at most: a second answer to the same part meets the primary key.
CREATE TABLE answer (
    draw_id        uuid        NOT NULL,
    part           smallint    NOT NULL,
    person_id      uuid        NOT NULL,
    typed          text        NOT NULL,
    read_value     text        NOT NULL,
    read_unit      text        NOT NULL,
    read_figures   text        NOT NULL,
    verdict        text        NOT NULL,
    slip           text,
    expected       text        NOT NULL,
    hints          smallint    NOT NULL DEFAULT 0,
    shown_at       timestamptz NOT NULL,
    answered_at    timestamptz NOT NULL,
    core_version   text        NOT NULL,
    CONSTRAINT answer_pk PRIMARY KEY (draw_id, part),
    CONSTRAINT answer_draw_fk FOREIGN KEY (draw_id) REFERENCES draw (id),
    CONSTRAINT answer_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT answer_typed_length CHECK (char_length(typed) <= 200),
    CONSTRAINT answer_verdict_known CHECK (verdict IN
        ('RIGHT', 'WRONG_UNIT', 'SLIP', 'POWER_OF_TEN', 'ROUNDED_EARLY', 'WRONG')),
    CONSTRAINT answer_slip_with_verdict CHECK ((verdict = 'SLIP') <= (slip IS NOT NULL))
);
CREATE INDEX answer_by_person ON answer (person_id, answered_at DESC);

-- Standing of a person in a skill, kept up in the answer's own transaction; boards read this, never the answers.
CREATE TABLE skill_standing (
    person_id     uuid        NOT NULL,
    skill         text        NOT NULL,
    answers       integer     NOT NULL,
    right_answers integer     NOT NULL,
    average       double precision NOT NULL,
    days          integer     NOT NULL,
    last_day      date        NOT NULL,
    last_at       timestamptz NOT NULL,
    last_verdict  text        NOT NULL,
    wrong_in_row  integer     NOT NULL,
    right_in_row  integer     NOT NULL,
    level         smallint    NOT NULL,
    rung          smallint    NOT NULL,
    run           smallint    NOT NULL,
    CONSTRAINT skill_standing_pk PRIMARY KEY (person_id, skill),
    CONSTRAINT skill_standing_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT skill_standing_counts CHECK (right_answers BETWEEN 0 AND answers),
    CONSTRAINT skill_standing_average CHECK (average BETWEEN 0 AND 1),
    CONSTRAINT skill_standing_levels CHECK (level BETWEEN 1 AND 3 AND rung BETWEEN 1 AND 3)
);

CREATE TABLE lesson_read (
    person_id uuid        NOT NULL,
    lesson_id text        NOT NULL,
    read_at   timestamptz NOT NULL,
    CONSTRAINT lesson_read_pk PRIMARY KEY (person_id, lesson_id),
    CONSTRAINT lesson_read_person_fk FOREIGN KEY (person_id) REFERENCES person (id)
);

-- Erases the demo school, and only a demo school. Runs with the owner's rights because the application has no right to
-- delete people or answers.
CREATE FUNCTION erase_demo() RETURNS void
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    every_table text;
BEGIN
    PERFORM 1 FROM ${flyway:defaultSchema}.school WHERE demo;
    IF NOT FOUND THEN
        RAISE EXCEPTION 'this school is not the demo school: nothing is erased';
    END IF;
    -- Whatever later migrations add belongs to the demo too.
    SELECT string_agg(format('%I.%I', schemaname, tablename), ', ') INTO every_table
    FROM pg_tables
    WHERE schemaname = '${flyway:defaultSchema}' AND tablename <> '${flyway:table}';
    EXECUTE 'TRUNCATE ' || every_table;
END;
$$;
REVOKE ALL ON FUNCTION erase_demo() FROM PUBLIC;

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT USAGE ON SCHEMA ${flyway:defaultSchema} TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE ON school, person, cohort, cohort_member, sign_in, skill_standing TO "${app_role}";
        GRANT SELECT, INSERT, DELETE ON person_role TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE, DELETE ON sign_in_failure TO "${app_role}";
        GRANT SELECT, INSERT ON audit_entry, exercise_version, answer, lesson_read TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE (finished_at, hints_shown) ON draw TO "${app_role}";
        GRANT EXECUTE ON FUNCTION erase_demo() TO "${app_role}";
    END IF;
END;
$$;

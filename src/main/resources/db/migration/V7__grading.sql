-- Graded sets: what an instructor sets for a cohort, what apprentices hand in, and what became of each mark.

-- A draft is changed as long as it is one; whoever saves names the revision that they saw. Publishing freezes the rest.
CREATE TABLE graded_set (
    id               uuid        NOT NULL,
    cohort_id        uuid        NOT NULL,
    title            text        NOT NULL,
    note             text        NOT NULL DEFAULT '',
    state            text        NOT NULL DEFAULT 'DRAFT',
    revision         integer     NOT NULL DEFAULT 1,
    tries            smallint    NOT NULL,
    feedback         text        NOT NULL,
    opens_local      timestamp,
    closes_local     timestamp,
    zone             text,
    opens_at         timestamptz,
    closes_at        timestamptz,
    created_by       uuid        NOT NULL,
    created_at       timestamptz NOT NULL,
    changed_by       uuid        NOT NULL,
    changed_at       timestamptz NOT NULL,
    published_by     uuid,
    published_at     timestamptz,
    withdrawn_by     uuid,
    withdrawn_at     timestamptz,
    withdrawn_reason text,
    CONSTRAINT graded_set_pk PRIMARY KEY (id),
    CONSTRAINT graded_set_cohort_fk FOREIGN KEY (cohort_id) REFERENCES cohort (id),
    CONSTRAINT graded_set_created_by_fk FOREIGN KEY (created_by) REFERENCES person (id),
    CONSTRAINT graded_set_changed_by_fk FOREIGN KEY (changed_by) REFERENCES person (id),
    CONSTRAINT graded_set_published_by_fk FOREIGN KEY (published_by) REFERENCES person (id),
    CONSTRAINT graded_set_withdrawn_by_fk FOREIGN KEY (withdrawn_by) REFERENCES person (id),
    CONSTRAINT graded_set_title_length CHECK (char_length(title) BETWEEN 1 AND 80),
    CONSTRAINT graded_set_note_length CHECK (char_length(note) <= 1000),
    CONSTRAINT graded_set_state_known CHECK (state IN ('DRAFT', 'PUBLISHED', 'WITHDRAWN')),
    CONSTRAINT graded_set_tries CHECK (tries BETWEEN 1 AND 9),
    CONSTRAINT graded_set_feedback_known CHECK (feedback IN ('EACH', 'CLOSING')),
    CONSTRAINT graded_set_published_whole CHECK (
        num_nulls(opens_local, closes_local, zone, opens_at, closes_at, published_by, published_at) = 0
        OR (state <> 'PUBLISHED' AND num_nonnulls(zone, opens_at, closes_at, published_by, published_at) = 0)),
    CONSTRAINT graded_set_span CHECK (closes_at > opens_at),
    CONSTRAINT graded_set_withdrawn_whole CHECK (
        num_nulls(withdrawn_by, withdrawn_at, withdrawn_reason) = CASE WHEN state = 'WITHDRAWN' THEN 0 ELSE 3 END),
    CONSTRAINT graded_set_reason_length CHECK (char_length(withdrawn_reason) BETWEEN 3 AND 500)
);
CREATE INDEX graded_set_by_cohort ON graded_set (cohort_id, state);

-- What a set is made of: one exercise, or so many of a skill at a level. Ranges: "name from to", one a line.
CREATE TABLE graded_line (
    id          uuid     NOT NULL,
    set_id      uuid     NOT NULL,
    place       smallint NOT NULL,
    exercise_id text,
    skill       text,
    level       smallint,
    items       smallint NOT NULL,
    weight      smallint NOT NULL,
    ranges      text     NOT NULL DEFAULT '',
    CONSTRAINT graded_line_pk PRIMARY KEY (id),
    CONSTRAINT graded_line_set_fk FOREIGN KEY (set_id) REFERENCES graded_set (id),
    CONSTRAINT graded_line_place_once UNIQUE (set_id, place) DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT graded_line_exercise_or_rule CHECK (
        (exercise_id IS NOT NULL AND num_nonnulls(skill, level) = 0 AND items = 1)
        OR (exercise_id IS NULL AND skill IS NOT NULL AND ranges = '')),
    CONSTRAINT graded_line_level_known CHECK (level BETWEEN 1 AND 3),
    CONSTRAINT graded_line_counts CHECK (items BETWEEN 1 AND 20 AND weight BETWEEN 1 AND 100)
);

-- The exercises that a published line gives or draws from, in the version of that day.
CREATE TABLE graded_pool (
    line_id     uuid NOT NULL,
    exercise_id text NOT NULL,
    version     text NOT NULL,
    skill       text NOT NULL,
    CONSTRAINT graded_pool_pk PRIMARY KEY (line_id, exercise_id),
    CONSTRAINT graded_pool_line_fk FOREIGN KEY (line_id) REFERENCES graded_line (id),
    CONSTRAINT graded_pool_version_fk FOREIGN KEY (exercise_id, version)
        REFERENCES exercise_version (exercise_id, version)
);

-- More time for one person; the latest one given counts.
CREATE TABLE graded_extension (
    id           uuid        NOT NULL,
    set_id       uuid        NOT NULL,
    person_id    uuid        NOT NULL,
    closes_at    timestamptz NOT NULL,
    reason       text        NOT NULL,
    given_by     uuid        NOT NULL,
    given_at     timestamptz NOT NULL,
    CONSTRAINT graded_extension_pk PRIMARY KEY (id),
    CONSTRAINT graded_extension_set_fk FOREIGN KEY (set_id) REFERENCES graded_set (id),
    CONSTRAINT graded_extension_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT graded_extension_given_by_fk FOREIGN KEY (given_by) REFERENCES person (id),
    CONSTRAINT graded_extension_reason_length CHECK (char_length(reason) BETWEEN 3 AND 500)
);
CREATE INDEX graded_extension_latest ON graded_extension (set_id, person_id, given_at DESC);

-- One try of one person at a set.
CREATE TABLE graded_work (
    id           uuid        NOT NULL,
    set_id       uuid        NOT NULL,
    person_id    uuid        NOT NULL,
    nth          smallint    NOT NULL,
    seed         bigint      NOT NULL,
    begun_at     timestamptz NOT NULL,
    handed_in_at timestamptz,
    CONSTRAINT graded_work_pk PRIMARY KEY (id),
    CONSTRAINT graded_work_set_fk FOREIGN KEY (set_id) REFERENCES graded_set (id),
    CONSTRAINT graded_work_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT graded_work_nth_once UNIQUE (set_id, person_id, nth),
    CONSTRAINT graded_work_nth CHECK (nth BETWEEN 1 AND 9),
    CONSTRAINT graded_work_order_of_time CHECK (handed_in_at >= begun_at)
);
CREATE UNIQUE INDEX graded_work_open_once ON graded_work (set_id, person_id) WHERE handed_in_at IS NULL;
CREATE INDEX graded_work_by_person ON graded_work (person_id);

CREATE TABLE graded_item (
    work_id     uuid     NOT NULL,
    number      smallint NOT NULL,
    line_id     uuid     NOT NULL,
    exercise_id text     NOT NULL,
    seed        bigint   NOT NULL,
    CONSTRAINT graded_item_pk PRIMARY KEY (work_id, number),
    CONSTRAINT graded_item_work_fk FOREIGN KEY (work_id) REFERENCES graded_work (id),
    CONSTRAINT graded_item_pool_fk FOREIGN KEY (line_id, exercise_id) REFERENCES graded_pool (line_id, exercise_id),
    CONSTRAINT graded_item_exercise_once UNIQUE (work_id, exercise_id),
    CONSTRAINT graded_item_number CHECK (number >= 1)
);

-- The answer to each part with its verdict. It may be replaced only where the set tells nothing before it closes.
CREATE TABLE graded_answer (
    work_id      uuid        NOT NULL,
    number       smallint    NOT NULL,
    part         smallint    NOT NULL,
    typed        text        NOT NULL,
    read_value   text        NOT NULL,
    read_unit    text        NOT NULL,
    read_figures text        NOT NULL,
    verdict      text        NOT NULL,
    slip         text,
    expected     text        NOT NULL,
    saves        integer     NOT NULL DEFAULT 1,
    shown_at     timestamptz NOT NULL,
    answered_at  timestamptz NOT NULL,
    core_version text        NOT NULL,
    CONSTRAINT graded_answer_pk PRIMARY KEY (work_id, number, part),
    CONSTRAINT graded_answer_item_fk FOREIGN KEY (work_id, number) REFERENCES graded_item (work_id, number),
    CONSTRAINT graded_answer_typed_length CHECK (char_length(typed) <= 200),
    CONSTRAINT graded_answer_verdict_known CHECK (verdict IN
        ('RIGHT', 'WRONG_UNIT', 'SLIP', 'POWER_OF_TEN', 'ROUNDED_EARLY', 'WRONG')),
    CONSTRAINT graded_answer_counted CHECK (part >= 0 AND saves >= 1),
    CONSTRAINT graded_answer_order_of_time CHECK (answered_at >= shown_at)
);

-- A job that judges the answers to a mended exercise again. One at a time for each set.
CREATE TABLE graded_regrade (
    id           uuid        NOT NULL,
    set_id       uuid        NOT NULL,
    exercise_id  text        NOT NULL,
    version      text        NOT NULL,
    state        text        NOT NULL,
    reason       text        NOT NULL,
    started_by   uuid        NOT NULL,
    started_at   timestamptz NOT NULL,
    finished_at  timestamptz,
    undone_by    uuid,
    undone_at    timestamptz,
    CONSTRAINT graded_regrade_pk PRIMARY KEY (id),
    CONSTRAINT graded_regrade_set_fk FOREIGN KEY (set_id) REFERENCES graded_set (id),
    CONSTRAINT graded_regrade_version_fk FOREIGN KEY (exercise_id, version)
        REFERENCES exercise_version (exercise_id, version),
    CONSTRAINT graded_regrade_started_by_fk FOREIGN KEY (started_by) REFERENCES person (id),
    CONSTRAINT graded_regrade_undone_by_fk FOREIGN KEY (undone_by) REFERENCES person (id),
    CONSTRAINT graded_regrade_state_known CHECK (state IN ('RUNNING', 'DONE', 'UNDOING', 'UNDONE')),
    CONSTRAINT graded_regrade_reason_length CHECK (char_length(reason) BETWEEN 3 AND 500)
);
CREATE UNIQUE INDEX graded_regrade_one_at_a_time ON graded_regrade (set_id) WHERE state IN ('RUNNING', 'UNDOING');

-- What the job still has to do and what it did, so that it can go on after a restart.
CREATE TABLE graded_regrade_answer (
    regrade_id uuid     NOT NULL,
    work_id    uuid     NOT NULL,
    number     smallint NOT NULL,
    part       smallint NOT NULL,
    outcome    text     NOT NULL DEFAULT 'WAITING',
    CONSTRAINT graded_regrade_answer_pk PRIMARY KEY (regrade_id, work_id, number, part),
    CONSTRAINT graded_regrade_answer_regrade_fk FOREIGN KEY (regrade_id) REFERENCES graded_regrade (id),
    CONSTRAINT graded_regrade_answer_answer_fk FOREIGN KEY (work_id, number, part)
        REFERENCES graded_answer (work_id, number, part),
    CONSTRAINT graded_regrade_answer_outcome_known CHECK (outcome IN
        ('WAITING', 'SAME', 'CHANGED', 'CORRECTED_BY_HAND', 'OTHER_NUMBERS', 'UNDONE', 'KEPT'))
);

-- Every change of a mark after the answer was judged; the newest one stands. Nothing here is ever changed.
CREATE TABLE graded_mark_change (
    id          bigint      NOT NULL GENERATED ALWAYS AS IDENTITY,
    work_id     uuid        NOT NULL,
    number      smallint    NOT NULL,
    part        smallint    NOT NULL,
    kind        text        NOT NULL,
    credit      smallint    NOT NULL,
    verdict     text,
    slip        text,
    expected    text,
    reason      text        NOT NULL,
    changed_by  uuid        NOT NULL,
    changed_at  timestamptz NOT NULL,
    regrade_id  uuid,
    CONSTRAINT graded_mark_change_pk PRIMARY KEY (id),
    CONSTRAINT graded_mark_change_item_fk FOREIGN KEY (work_id, number) REFERENCES graded_item (work_id, number),
    CONSTRAINT graded_mark_change_by_fk FOREIGN KEY (changed_by) REFERENCES person (id),
    CONSTRAINT graded_mark_change_regrade_fk FOREIGN KEY (regrade_id) REFERENCES graded_regrade (id),
    CONSTRAINT graded_mark_change_kind_known CHECK (kind IN ('CORRECTION', 'REGRADE', 'UNDO')),
    CONSTRAINT graded_mark_change_regrade_named CHECK ((kind = 'CORRECTION') = (regrade_id IS NULL)),
    CONSTRAINT graded_mark_change_credit CHECK (credit BETWEEN 0 AND 100),
    CONSTRAINT graded_mark_change_reason_length CHECK (char_length(reason) BETWEEN 3 AND 500)
);
CREATE INDEX graded_mark_change_latest ON graded_mark_change (work_id, number, part, id DESC);
-- Each answer is judged again once by a job, and undone once.
CREATE UNIQUE INDEX graded_mark_change_job_once ON graded_mark_change (regrade_id, work_id, number, part, kind)
    WHERE regrade_id IS NOT NULL;

-- What is out stays as it is, also where the application and the owner share one login.
CREATE FUNCTION refuse_published_lines() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp
AS $$
BEGIN
    PERFORM 1 FROM ${flyway:defaultSchema}.graded_set
    WHERE id = (CASE WHEN TG_OP = 'INSERT' THEN NEW.set_id ELSE OLD.set_id END) AND state <> 'DRAFT';
    IF FOUND THEN
        RAISE EXCEPTION 'a set that was published is never changed' USING ERRCODE = 'restrict_violation';
    END IF;
    RETURN CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
END;
$$;
CREATE TRIGGER graded_line_stays BEFORE INSERT OR UPDATE OR DELETE ON graded_line
    FOR EACH ROW EXECUTE FUNCTION refuse_published_lines();

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT,
            UPDATE (cohort_id, title, note, state, revision, tries, feedback, opens_local, closes_local, zone, opens_at,
                closes_at, changed_by, changed_at, published_by, published_at, withdrawn_by, withdrawn_at,
                withdrawn_reason)
            ON graded_set TO "${app_role}";
        GRANT SELECT, INSERT, DELETE ON graded_line TO "${app_role}";
        GRANT SELECT, INSERT ON graded_pool, graded_extension, graded_item, graded_mark_change TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE (handed_in_at) ON graded_work TO "${app_role}";
        GRANT SELECT, INSERT,
            UPDATE (typed, read_value, read_unit, read_figures, verdict, slip, expected, saves, shown_at, answered_at,
                core_version)
            ON graded_answer TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE (state, finished_at, undone_by, undone_at) ON graded_regrade TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE (outcome) ON graded_regrade_answer TO "${app_role}";
    END IF;
END;
$$;

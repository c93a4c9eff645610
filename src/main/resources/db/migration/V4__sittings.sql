-- Sittings: recorded tries at a check. A sitting that was handed in is never changed again, by nobody: triggers see to
-- that also where the application and the owner share one login.

CREATE TABLE sitting (
    id                  uuid        NOT NULL,
    person_id           uuid        NOT NULL,
    check_id            text        NOT NULL,
    title               text        NOT NULL,
    pool_version        text        NOT NULL,
    items               smallint    NOT NULL,
    pass_right          smallint    NOT NULL,
    pass_critical_wrong smallint    NOT NULL,
    seed                bigint      NOT NULL,
    day                 date        NOT NULL,
    started_at          timestamptz NOT NULL,
    handed_in_at        timestamptz,
    right_items         smallint,
    critical_wrong      smallint,
    passed              boolean,
    content_hash        text,
    core_version        text,
    CONSTRAINT sitting_pk PRIMARY KEY (id),
    CONSTRAINT sitting_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT sitting_pool_version_shape CHECK (pool_version ~ '^[0-9a-f]{64}$'),
    CONSTRAINT sitting_content_hash_shape CHECK (content_hash ~ '^[0-9a-f]{64}$'),
    CONSTRAINT sitting_one_try_a_day UNIQUE (person_id, check_id, day),
    CONSTRAINT sitting_rule CHECK (items > 0 AND pass_right BETWEEN 1 AND items AND pass_critical_wrong >= 0),
    CONSTRAINT sitting_order_of_time CHECK (handed_in_at >= started_at),
    CONSTRAINT sitting_result_counted CHECK (right_items BETWEEN 0 AND items AND critical_wrong BETWEEN 0 AND items),
    CONSTRAINT sitting_result_whole CHECK (num_nulls(
        handed_in_at, right_items, critical_wrong, passed, content_hash, core_version) IN (0, 6)),
    CONSTRAINT sitting_result_by_rule CHECK (
        passed = (right_items >= pass_right AND critical_wrong <= pass_critical_wrong))
);
CREATE UNIQUE INDEX sitting_open_once ON sitting (person_id, check_id) WHERE handed_in_at IS NULL;

-- One row for each item: what was drawn, the answer saved last, and its verdict once the sitting is handed in.
CREATE TABLE sitting_item (
    sitting_id   uuid     NOT NULL,
    number       smallint NOT NULL,
    exercise_id  text     NOT NULL,
    version      text     NOT NULL,
    skill        text     NOT NULL,
    critical     boolean  NOT NULL,
    seed         bigint   NOT NULL,
    typed        text,
    read_value   text,
    read_unit    text,
    read_figures text,
    saves        integer  NOT NULL DEFAULT 0,
    saved_at     timestamptz,
    verdict      text,
    slip         text,
    expected     text,
    CONSTRAINT sitting_item_pk PRIMARY KEY (sitting_id, number),
    CONSTRAINT sitting_item_sitting_fk FOREIGN KEY (sitting_id) REFERENCES sitting (id),
    CONSTRAINT sitting_item_version_fk FOREIGN KEY (exercise_id, version)
        REFERENCES exercise_version (exercise_id, version),
    CONSTRAINT sitting_item_exercise_once UNIQUE (sitting_id, exercise_id),
    CONSTRAINT sitting_item_counted CHECK (number >= 1 AND saves >= 0),
    CONSTRAINT sitting_item_typed_length CHECK (char_length(typed) <= 200),
    CONSTRAINT sitting_item_answer_whole CHECK (
        num_nulls(typed, read_value, read_unit, read_figures, saved_at) = CASE WHEN saves = 0 THEN 5 ELSE 0 END),
    CONSTRAINT sitting_item_verdict_known CHECK (verdict IN
        ('RIGHT', 'WRONG_UNIT', 'SLIP', 'POWER_OF_TEN', 'ROUNDED_EARLY', 'WRONG', 'LEFT_OPEN')),
    CONSTRAINT sitting_item_left_open CHECK ((verdict = 'LEFT_OPEN') = (saves = 0))
);

-- When each answer was saved; only the last answer itself is kept.
CREATE TABLE sitting_save (
    sitting_id uuid        NOT NULL,
    number     smallint    NOT NULL,
    nth        integer     NOT NULL,
    saved_at   timestamptz NOT NULL,
    CONSTRAINT sitting_save_pk PRIMARY KEY (sitting_id, number, nth),
    CONSTRAINT sitting_save_item_fk FOREIGN KEY (sitting_id, number) REFERENCES sitting_item (sitting_id, number)
);

-- A talk with somebody who failed a check several times; the next try waits for it.
CREATE TABLE sitting_talk (
    id        uuid        NOT NULL,
    person_id uuid        NOT NULL,
    check_id  text        NOT NULL,
    noted_by  uuid        NOT NULL,
    noted_at  timestamptz NOT NULL,
    words     text        NOT NULL,
    CONSTRAINT sitting_talk_pk PRIMARY KEY (id),
    CONSTRAINT sitting_talk_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT sitting_talk_noted_by_fk FOREIGN KEY (noted_by) REFERENCES person (id),
    CONSTRAINT sitting_talk_between_two CHECK (noted_by <> person_id),
    CONSTRAINT sitting_talk_words_length CHECK (char_length(words) BETWEEN 1 AND 1000)
);
CREATE INDEX sitting_talk_by_person ON sitting_talk (person_id, check_id, noted_at DESC);

CREATE FUNCTION refuse_handed_in() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp
AS $$
BEGIN
    RAISE EXCEPTION 'a sitting that was handed in is never changed' USING ERRCODE = 'restrict_violation';
END;
$$;

CREATE TRIGGER sitting_stays BEFORE UPDATE OR DELETE ON sitting
    FOR EACH ROW WHEN (OLD.handed_in_at IS NOT NULL) EXECUTE FUNCTION refuse_handed_in();

CREATE FUNCTION refuse_when_handed_in() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    at_row uuid;
BEGIN
    at_row := CASE WHEN TG_OP = 'INSERT' THEN NEW.sitting_id ELSE OLD.sitting_id END;
    PERFORM 1 FROM ${flyway:defaultSchema}.sitting WHERE id = at_row AND handed_in_at IS NOT NULL;
    IF FOUND THEN
        RAISE EXCEPTION 'a sitting that was handed in is never changed' USING ERRCODE = 'restrict_violation';
    END IF;
    RETURN CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
END;
$$;

CREATE TRIGGER sitting_item_stays BEFORE INSERT OR UPDATE OR DELETE ON sitting_item
    FOR EACH ROW EXECUTE FUNCTION refuse_when_handed_in();
CREATE TRIGGER sitting_save_stays BEFORE INSERT OR UPDATE OR DELETE ON sitting_save
    FOR EACH ROW EXECUTE FUNCTION refuse_when_handed_in();

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT,
            UPDATE (handed_in_at, right_items, critical_wrong, passed, content_hash, core_version)
            ON sitting TO "${app_role}";
        GRANT SELECT, INSERT,
            UPDATE (typed, read_value, read_unit, read_figures, saves, saved_at, verdict, slip, expected)
            ON sitting_item TO "${app_role}";
        GRANT SELECT, INSERT ON sitting_save, sitting_talk TO "${app_role}";
    END IF;
END;
$$;

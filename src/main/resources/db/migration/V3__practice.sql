-- How practice goes on: rungs of the ladder, return dates, what each exercise came to, sessions of mixed items, worked
-- examples that were seen, and stages that were opened by hand.

-- The ladder has five rungs now: 0 worked example, 1 step by step, 2 with the plan, 3 bare, 4 whole job.
ALTER TABLE skill_standing DROP CONSTRAINT skill_standing_levels;
ALTER TABLE skill_standing RENAME COLUMN level TO offered;
UPDATE skill_standing SET offered = (ARRAY[1, 3, 4])[offered], rung = (ARRAY[1, 3, 4])[rung];
ALTER TABLE skill_standing
    ADD COLUMN first_day    date,
    ADD COLUMN mastered_on  date,
    ADD COLUMN return_step  smallint NOT NULL DEFAULT 0,
    ADD COLUMN due_on       date,
    ADD COLUMN right_on_day smallint NOT NULL DEFAULT 0,
    ADD COLUMN missed       boolean  NOT NULL DEFAULT false;
UPDATE skill_standing s SET
    first_day = coalesce(
        (SELECT min((a.answered_at AT TIME ZONE (SELECT zone FROM school))::date)
         FROM draw d JOIN answer a ON a.draw_id = d.id WHERE d.person_id = s.person_id AND d.skill = s.skill),
        s.last_day),
    mastered_on = CASE WHEN s.average >= 0.85 AND s.days >= 3 THEN s.last_day END;
ALTER TABLE skill_standing
    ALTER COLUMN first_day SET NOT NULL,
    ADD CONSTRAINT skill_standing_rungs CHECK (offered BETWEEN 0 AND 4 AND rung BETWEEN 1 AND 4),
    ADD CONSTRAINT skill_standing_returns CHECK (return_step BETWEEN 0 AND 4 AND (return_step > 0) = (due_on IS NOT NULL));

-- Where a person stands with one exercise, kept up in the answer's own statement like the standing in the skill.
CREATE TABLE exercise_standing (
    person_id       uuid        NOT NULL,
    skill           text        NOT NULL,
    exercise_id     text        NOT NULL,
    answers         integer     NOT NULL,
    wrong_in_row    integer     NOT NULL,
    last_at         timestamptz NOT NULL,
    held            text,
    last_held       text,
    held_at         timestamptz,
    sure_wrong      text,
    sure_wrong_draw uuid,
    sure_wrong_part smallint    NOT NULL DEFAULT 0,
    guess           integer     NOT NULL DEFAULT 0,
    guess_right     integer     NOT NULL DEFAULT 0,
    fairly          integer     NOT NULL DEFAULT 0,
    fairly_right    integer     NOT NULL DEFAULT 0,
    sure            integer     NOT NULL DEFAULT 0,
    sure_right      integer     NOT NULL DEFAULT 0,
    CONSTRAINT exercise_standing_pk PRIMARY KEY (person_id, skill, exercise_id),
    CONSTRAINT exercise_standing_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT exercise_standing_draw_fk FOREIGN KEY (sure_wrong_draw) REFERENCES draw (id),
    CONSTRAINT exercise_standing_held_known CHECK (held IN ('WRONG', 'FAST') AND last_held IN ('WRONG', 'FAST')),
    CONSTRAINT exercise_standing_held_when CHECK ((last_held IS NULL) = (held_at IS NULL) AND
        (held IS NULL OR last_held IS NOT NULL)),
    CONSTRAINT exercise_standing_sure_wrong_known CHECK (sure_wrong IN ('LOOK', 'AGAIN')),
    CONSTRAINT exercise_standing_sure_wrong_where CHECK ((sure_wrong IS NULL) = (sure_wrong_draw IS NULL)),
    CONSTRAINT exercise_standing_tally CHECK (guess_right BETWEEN 0 AND guess AND fairly_right BETWEEN 0 AND fairly
        AND sure_right BETWEEN 0 AND sure AND guess + fairly + sure <= answers)
);
CREATE INDEX exercise_standing_to_do ON exercise_standing (person_id)
    WHERE held_at IS NOT NULL OR sure_wrong IS NOT NULL;

-- A session of mixed items on one school day. Its items follow from the seed and the standings of that moment.
CREATE TABLE practice_session (
    id        uuid        NOT NULL,
    person_id uuid        NOT NULL,
    day       date        NOT NULL,
    number    smallint    NOT NULL,
    begun_at  timestamptz NOT NULL,
    seed      bigint      NOT NULL,
    items     text[]      NOT NULL,
    CONSTRAINT practice_session_pk PRIMARY KEY (id),
    CONSTRAINT practice_session_once UNIQUE (person_id, day, number),
    CONSTRAINT practice_session_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT practice_session_items CHECK (cardinality(items) BETWEEN 1 AND 20)
);

-- estimate: the exponent of the decade that was chosen before reckoning; asks_estimate: null where none makes sense.
ALTER TABLE draw
    ADD COLUMN with_plan      boolean NOT NULL DEFAULT false,
    ADD COLUMN asks_estimate  boolean,
    ADD COLUMN estimate       smallint,
    ADD COLUMN looked_up      boolean NOT NULL DEFAULT false,
    ADD COLUMN session_id     uuid,
    ADD COLUMN session_number smallint,
    ADD CONSTRAINT draw_estimate_asked CHECK (estimate IS NULL OR asks_estimate),
    ADD CONSTRAINT draw_session_fk FOREIGN KEY (session_id) REFERENCES practice_session (id),
    ADD CONSTRAINT draw_session_whole CHECK ((session_id IS NULL) = (session_number IS NULL));
CREATE INDEX draw_latest ON draw (person_id, drawn_at DESC);
-- Outside sessions an open draw is taken up again; in a session each number is drawn once.
DROP INDEX draw_open_once;
CREATE UNIQUE INDEX draw_open_once ON draw (person_id, skill, level) WHERE finished_at IS NULL AND session_id IS NULL;
CREATE UNIQUE INDEX draw_session_once ON draw (session_id, session_number) WHERE session_id IS NOT NULL;
CREATE INDEX draw_open ON draw (person_id) WHERE finished_at IS NULL;

ALTER TABLE answer
    ADD COLUMN confidence text,
    ADD COLUMN estimate   smallint,
    ADD COLUMN looked_up  boolean NOT NULL DEFAULT false,
    ADD CONSTRAINT answer_confidence_known CHECK (confidence IN ('GUESS', 'FAIRLY', 'SURE'));

CREATE TABLE worked_example_seen (
    person_id   uuid        NOT NULL,
    skill       text        NOT NULL,
    exercise_id text        NOT NULL,
    seen_at     timestamptz NOT NULL,
    CONSTRAINT worked_example_seen_pk PRIMARY KEY (person_id, skill, exercise_id),
    CONSTRAINT worked_example_seen_person_fk FOREIGN KEY (person_id) REFERENCES person (id)
);

CREATE TABLE stage_opened (
    person_id uuid        NOT NULL,
    stage     text        NOT NULL,
    opened_by uuid        NOT NULL,
    reason    text        NOT NULL,
    opened_at timestamptz NOT NULL,
    CONSTRAINT stage_opened_pk PRIMARY KEY (person_id, stage),
    CONSTRAINT stage_opened_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT stage_opened_by_fk FOREIGN KEY (opened_by) REFERENCES person (id),
    CONSTRAINT stage_opened_reason_length CHECK (char_length(reason) BETWEEN 3 AND 300)
);

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT, UPDATE ON exercise_standing, worked_example_seen TO "${app_role}";
        GRANT SELECT, INSERT ON practice_session, stage_opened TO "${app_role}";
        GRANT UPDATE (estimate, looked_up) ON draw TO "${app_role}";
    END IF;
END;
$$;

-- Simulated practice: who played what through, and what was chosen at each scene. The words are kept as they were shown.

CREATE TABLE simulation_run (
    id            uuid        NOT NULL,
    person_id     uuid        NOT NULL,
    simulation_id text        NOT NULL,
    title         text        NOT NULL,
    timed         boolean     NOT NULL,
    begun_at      timestamptz NOT NULL,
    shown_at      timestamptz NOT NULL,
    ended_at      timestamptz,
    ending        text,
    CONSTRAINT simulation_run_pk PRIMARY KEY (id),
    CONSTRAINT simulation_run_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT simulation_run_order_of_time CHECK (shown_at >= begun_at AND ended_at >= begun_at),
    CONSTRAINT simulation_run_ending_when CHECK (ending IS NULL OR ended_at IS NOT NULL)
);
CREATE UNIQUE INDEX simulation_run_open_once ON simulation_run (person_id, simulation_id) WHERE ended_at IS NULL;
CREATE INDEX simulation_run_by_person ON simulation_run (person_id, begun_at DESC);

-- One row for each scene that was gone through; the key lets a second press meet the first choice.
CREATE TABLE simulation_step (
    run_id      uuid        NOT NULL,
    number      smallint    NOT NULL,
    scene       text        NOT NULL,
    scene_title text        NOT NULL,
    chosen      text        NOT NULL,
    outcome     text        NOT NULL,
    consequence text        NOT NULL,
    why         text        NOT NULL,
    leads_to    text        NOT NULL,
    shown_at    timestamptz NOT NULL,
    chosen_at   timestamptz NOT NULL,
    late        boolean     NOT NULL,
    CONSTRAINT simulation_step_pk PRIMARY KEY (run_id, number),
    CONSTRAINT simulation_step_run_fk FOREIGN KEY (run_id) REFERENCES simulation_run (id),
    CONSTRAINT simulation_step_counted CHECK (number >= 1),
    CONSTRAINT simulation_step_outcome_known CHECK (outcome IN ('SAFE', 'SLIP', 'HARM')),
    CONSTRAINT simulation_step_words_length CHECK (
        char_length(chosen) <= 600 AND char_length(consequence) <= 600 AND char_length(why) <= 600),
    CONSTRAINT simulation_step_order_of_time CHECK (chosen_at >= shown_at)
);

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT, UPDATE (shown_at, ended_at, ending) ON simulation_run TO "${app_role}";
        GRANT SELECT, INSERT ON simulation_step TO "${app_role}";
    END IF;
END;
$$;

-- How far a person has read in a lesson: the anchor of the part they saw last.
CREATE TABLE reading_place (
    person_id uuid        NOT NULL,
    lesson_id text        NOT NULL,
    anchor    text        NOT NULL,
    kept_at   timestamptz NOT NULL,
    CONSTRAINT reading_place_pk PRIMARY KEY (person_id, lesson_id),
    CONSTRAINT reading_place_person_fk FOREIGN KEY (person_id) REFERENCES person (id)
);

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT, UPDATE ON reading_place TO "${app_role}";
    END IF;
END;
$$;

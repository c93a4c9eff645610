-- That somebody who needed a word was given it. Nothing here is ever changed.
CREATE TABLE word_given (
    id        uuid        NOT NULL,
    person_id uuid        NOT NULL,
    skill     text        NOT NULL,
    why       text        NOT NULL,
    note      text        NOT NULL DEFAULT '',
    given_by  uuid        NOT NULL,
    given_at  timestamptz NOT NULL,
    CONSTRAINT word_given_pk PRIMARY KEY (id),
    CONSTRAINT word_given_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT word_given_by_fk FOREIGN KEY (given_by) REFERENCES person (id),
    CONSTRAINT word_given_to_another CHECK (given_by <> person_id),
    CONSTRAINT word_given_note_length CHECK (char_length(note) <= 1000)
);
CREATE INDEX word_given_latest ON word_given (person_id, skill, given_at DESC);

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT ON word_given TO "${app_role}";
    END IF;
END;
$$;

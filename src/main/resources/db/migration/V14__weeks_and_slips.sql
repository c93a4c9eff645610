-- What a person's page tells of weeks and of slips, kept up in the answer's own transaction like a standing: the page
-- never reads the history of the answers. Counts stay when old answers become counts.

CREATE TABLE week_standing (
    person_id     uuid    NOT NULL,
    monday        date    NOT NULL,
    answers       integer NOT NULL,
    right_answers integer NOT NULL,
    CONSTRAINT week_standing_pk PRIMARY KEY (person_id, monday),
    CONSTRAINT week_standing_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT week_standing_begins_on_monday CHECK (extract(isodow FROM monday) = 1),
    CONSTRAINT week_standing_counts CHECK (answers >= right_answers AND right_answers >= 0 AND answers > 0)
);

CREATE TABLE slip_standing (
    person_id uuid    NOT NULL,
    slip      text    NOT NULL,
    times     integer NOT NULL,
    CONSTRAINT slip_standing_pk PRIMARY KEY (person_id, slip),
    CONSTRAINT slip_standing_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT slip_standing_counts CHECK (times > 0)
);

-- Weeks are those of the school's zone at the moment of the answer. Both rows are taken in one order, and of one person
-- alone, so nobody waits for anybody else.
CREATE FUNCTION answer_counted() RETURNS trigger
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    zone text := coalesce((SELECT s.zone FROM ${flyway:defaultSchema}.school s), 'UTC');
BEGIN
    INSERT INTO ${flyway:defaultSchema}.week_standing AS w (person_id, monday, answers, right_answers)
    VALUES (NEW.person_id, date_trunc('week', NEW.answered_at AT TIME ZONE zone)::date, 1,
            (NEW.verdict = 'RIGHT')::integer)
    ON CONFLICT (person_id, monday) DO UPDATE
    SET answers = w.answers + 1, right_answers = w.right_answers + EXCLUDED.right_answers;
    IF NEW.slip IS NOT NULL THEN
        INSERT INTO ${flyway:defaultSchema}.slip_standing AS s (person_id, slip, times)
        VALUES (NEW.person_id, NEW.slip, 1)
        ON CONFLICT (person_id, slip) DO UPDATE SET times = s.times + 1;
    END IF;
    RETURN NULL;
END;
$$;
REVOKE ALL ON FUNCTION answer_counted() FROM PUBLIC;

CREATE TRIGGER answer_counted AFTER INSERT ON answer FOR EACH ROW EXECUTE FUNCTION answer_counted();

INSERT INTO week_standing (person_id, monday, answers, right_answers)
SELECT person_id,
       date_trunc('week', answered_at AT TIME ZONE coalesce((SELECT zone FROM school), 'UTC'))::date,
       count(*), count(*) FILTER (WHERE verdict = 'RIGHT')
FROM answer GROUP BY 1, 2;

INSERT INTO slip_standing (person_id, slip, times)
SELECT person_id, slip, count(*) FROM answer WHERE slip IS NOT NULL GROUP BY 1, 2;

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT ON week_standing, slip_standing TO "${app_role}";
    END IF;
END;
$$;

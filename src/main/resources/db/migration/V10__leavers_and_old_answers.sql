-- Anonymising reaches every free text about somebody and every entry that bears the name; old answers become counts.

-- Erases free texts and date of birth of the person whom the last line of the register says was anonymised, in the
-- register and in everything else that was written about that person; takes names and addresses out of the audit log.
-- What was done, by whom and when stays. Runs while the person still has the name.
CREATE OR REPLACE FUNCTION register_anonymise() RETURNS integer
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    last record;
    who record;
    mark text;
    place record;
    notes integer;
BEGIN
    SELECT kind, person_id INTO last FROM ${flyway:defaultSchema}.register_event ORDER BY number DESC LIMIT 1;
    IF last.kind IS DISTINCT FROM 'anonymised' OR NOT EXISTS (
        SELECT 1 FROM ${flyway:defaultSchema}.register_event e
        WHERE e.person_id = last.person_id AND e.kind = 'relation-ended') THEN
        RAISE EXCEPTION 'only the texts of somebody who has left and whom the last line names are erased'
            USING ERRCODE = 'check_violation';
    END IF;
    PERFORM set_config('riseandgel.erasing', 'on', true);
    UPDATE ${flyway:defaultSchema}.register_note SET salt = NULL, words = NULL
    WHERE person_id = last.person_id AND words IS NOT NULL;
    GET DIAGNOSTICS notes = ROW_COUNT;
    PERFORM set_config('riseandgel.erasing', 'off', true);
    DELETE FROM ${flyway:defaultSchema}.birth_date WHERE person_id = last.person_id;
    FOR place IN
        SELECT c.table_name AS name, v.col
        FROM (VALUES ('sitting_talk', 'words'), ('stage_opened', 'reason'), ('graded_extension', 'reason'),
                     ('word_given', 'note')) v (tab, col)
        JOIN information_schema.columns c
          ON c.table_schema = '${flyway:defaultSchema}' AND c.table_name = v.tab AND c.column_name = v.col
    LOOP
        EXECUTE format('UPDATE %I.%I SET %I = ''(erased)'' WHERE person_id = $1 AND %I <> ''''',
            '${flyway:defaultSchema}', place.name, place.col, place.col) USING last.person_id;
    END LOOP;
    UPDATE ${flyway:defaultSchema}.graded_mark_change c SET reason = '(erased)'
    FROM ${flyway:defaultSchema}.graded_work w
    WHERE w.id = c.work_id AND w.person_id = last.person_id AND c.kind = 'CORRECTION';
    SELECT sign_in_name, display_name INTO who FROM ${flyway:defaultSchema}.person WHERE id = last.person_id;
    mark := 'left-' || substring(replace(last.person_id::text, '-', '') FROM 21);
    UPDATE ${flyway:defaultSchema}.audit_entry SET detail = replace(detail, who.display_name, mark)
    WHERE who.display_name <> '' AND strpos(detail, who.display_name) > 0;
    UPDATE ${flyway:defaultSchema}.audit_entry
    SET detail = regexp_replace(detail,
        '(^|[^a-z0-9._-])' || replace(who.sign_in_name, '.', '\.') || '(?=$|[^a-z0-9._-])',
        '\1' || mark, 'g')
    WHERE who.sign_in_name <> '' AND strpos(detail, who.sign_in_name) > 0;
    UPDATE ${flyway:defaultSchema}.audit_entry SET address = '' WHERE actor = last.person_id AND address <> '';
    UPDATE ${flyway:defaultSchema}.sign_in SET address = '', browser = '' WHERE person_id = last.person_id;
    DELETE FROM ${flyway:defaultSchema}.sign_in_failure WHERE subject = 'account:' || who.sign_in_name;
    RETURN notes;
END;
$$;

-- What is left of answers whose time is over: how often which verdict came, by month, without anybody's name.
CREATE TABLE answer_tally (
    exercise_id text     NOT NULL,
    version     text     NOT NULL,
    part        smallint NOT NULL,
    month       date     NOT NULL,
    verdict     text     NOT NULL,
    slip        text     NOT NULL,
    answers     integer  NOT NULL,
    CONSTRAINT answer_tally_pk PRIMARY KEY (exercise_id, version, part, month, verdict, slip),
    CONSTRAINT answer_tally_month_begins CHECK (extract(day FROM month) = 1),
    CONSTRAINT answer_tally_counts CHECK (answers > 0)
);

-- Counts the answers of draws that were drawn before a moment, at least a year ago, and erases them and the draws; those
-- of the people named are kept, and so is what a page still leads to. Standings are kept up with each answer and stay.
-- Returns how many answers went.
CREATE FUNCTION purge_answers(until timestamptz, kept uuid[]) RETURNS integer
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    gone uuid[];
    erased integer;
BEGIN
    IF until > clock_timestamp() - interval '1 year' THEN
        RAISE EXCEPTION 'answers are kept for a year at least' USING ERRCODE = 'check_violation';
    END IF;
    SELECT array_agg(d.id) INTO gone
    FROM ${flyway:defaultSchema}.draw d
    WHERE d.drawn_at < until AND d.person_id <> ALL (kept)
      AND NOT EXISTS (SELECT 1 FROM ${flyway:defaultSchema}.answer a WHERE a.draw_id = d.id AND a.answered_at >= until)
      AND NOT EXISTS (SELECT 1 FROM ${flyway:defaultSchema}.exercise_standing s WHERE s.sure_wrong_draw = d.id);
    INSERT INTO ${flyway:defaultSchema}.answer_tally AS t (exercise_id, version, part, month, verdict, slip, answers)
    SELECT d.exercise_id, d.version, a.part, date_trunc('month', a.answered_at AT TIME ZONE 'UTC')::date, a.verdict,
           coalesce(a.slip, ''), count(*)
    FROM ${flyway:defaultSchema}.answer a JOIN ${flyway:defaultSchema}.draw d ON d.id = a.draw_id
    WHERE d.id = ANY (gone)
    GROUP BY 1, 2, 3, 4, 5, 6
    ON CONFLICT (exercise_id, version, part, month, verdict, slip)
        DO UPDATE SET answers = t.answers + EXCLUDED.answers;
    DELETE FROM ${flyway:defaultSchema}.answer WHERE draw_id = ANY (gone);
    GET DIAGNOSTICS erased = ROW_COUNT;
    DELETE FROM ${flyway:defaultSchema}.draw WHERE id = ANY (gone);
    RETURN erased;
END;
$$;
REVOKE ALL ON FUNCTION purge_answers(timestamptz, uuid[]) FROM PUBLIC;

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT ON answer_tally TO "${app_role}";
        GRANT EXECUTE ON FUNCTION purge_answers(timestamptz, uuid[]) TO "${app_role}";
    END IF;
END;
$$;

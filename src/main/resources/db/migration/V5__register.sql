-- The register of clearances. Lines are added and never changed: the application may insert and read, and triggers refuse
-- the rest to everybody, the owner included. Each line carries the hash of the line before it.

CREATE TABLE register_event (
    number        bigint      NOT NULL,
    id            uuid        NOT NULL,
    effective     timestamptz,
    recorded      timestamptz NOT NULL,
    -- What was said, as JSON text; the very bytes that the hash is over. Null once it was purged.
    content       text,
    salt          bytea,
    content_hash  bytea       NOT NULL,
    previous      bytea       NOT NULL,
    hash          bytea       NOT NULL,
    kind          text GENERATED ALWAYS AS (content::jsonb -> 'said' ->> 'type') STORED,
    person_id     uuid GENERATED ALWAYS AS ((content::jsonb -> 'said' ->> 'person')::uuid) STORED,
    CONSTRAINT register_event_pk PRIMARY KEY (number),
    CONSTRAINT register_event_id_once UNIQUE (id),
    CONSTRAINT register_event_number CHECK (number >= 1),
    CONSTRAINT register_event_times CHECK (effective <= recorded),
    CONSTRAINT register_event_whole CHECK (num_nulls(effective, content, salt) IN (0, 3)),
    CONSTRAINT register_event_says_something CHECK (content IS NULL OR kind IS NOT NULL),
    CONSTRAINT register_event_salt CHECK (octet_length(salt) = 16),
    CONSTRAINT register_event_hashes CHECK
        (octet_length(content_hash) = 32 AND octet_length(previous) = 32 AND octet_length(hash) = 32)
);
CREATE INDEX register_event_by_person ON register_event (person_id, number);
CREATE INDEX register_event_general ON register_event (number) WHERE person_id IS NULL;
CREATE INDEX register_event_corrections ON register_event (number) WHERE kind = 'corrected';

-- Free texts of the register, beside the chain: the line holds only the hash of salt and text, so that the text of a
-- leaver can be erased.
CREATE TABLE register_note (
    id          uuid        NOT NULL,
    person_id   uuid,
    written_at  timestamptz NOT NULL,
    commitment  text        NOT NULL,
    salt        bytea,
    words       text,
    CONSTRAINT register_note_pk PRIMARY KEY (id),
    CONSTRAINT register_note_length CHECK (char_length(words) BETWEEN 1 AND 2000),
    CONSTRAINT register_note_whole CHECK (num_nulls(salt, words) IN (0, 2)),
    CONSTRAINT register_note_sealed CHECK
        (words IS NULL OR commitment = encode(sha256(salt || convert_to(words, 'UTF8')), 'hex'))
);
CREATE INDEX register_note_by_person ON register_note (person_id);

-- Dates of birth. The application may add them and has no right to read them: it asks age_on, which tells no date, and
-- birth_date_for, which tells it to a safety lead and writes that down.
CREATE TABLE birth_date (
    event_id    uuid        NOT NULL,
    person_id   uuid        NOT NULL,
    born        date        NOT NULL,
    salt        bytea       NOT NULL,
    recorded    timestamptz NOT NULL,
    CONSTRAINT birth_date_pk PRIMARY KEY (event_id),
    CONSTRAINT birth_date_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT birth_date_span CHECK (born BETWEEN DATE '1900-01-01' AND DATE '2200-01-01')
);
CREATE INDEX birth_date_by_person ON birth_date (person_id, recorded DESC);

-- The suppliers' safety data sheets, as they came.
CREATE TABLE sds_file (
    sha256      text        NOT NULL,
    name        text        NOT NULL,
    media_type  text        NOT NULL,
    content     bytea       NOT NULL,
    filed_at    timestamptz NOT NULL,
    CONSTRAINT sds_file_pk PRIMARY KEY (sha256),
    CONSTRAINT sds_file_is_what_it_says CHECK (sha256 = encode(sha256(content), 'hex')),
    CONSTRAINT sds_file_name_length CHECK (char_length(name) BETWEEN 1 AND 200)
);

-- What the rule answers to one question from now on if nothing more happens. Worked out from the events, thrown away
-- whenever one comes that it depends on, and never read where anything is decided.
CREATE TABLE register_answer (
    person_id   uuid        NOT NULL,
    place_id    uuid        NOT NULL,
    task        text        NOT NULL,
    pieces      text        NOT NULL,
    depends_on  uuid[]      NOT NULL,
    CONSTRAINT register_answer_pk PRIMARY KEY (person_id, place_id, task)
);
CREATE INDEX register_answer_by_other ON register_answer USING gin (depends_on);

-- Each question at the door and over the network.
CREATE TABLE register_check (
    id          bigint      NOT NULL GENERATED ALWAYS AS IDENTITY,
    at          timestamptz NOT NULL,
    asked_by    uuid,
    person_id   uuid        NOT NULL,
    place_id    uuid        NOT NULL,
    task        text        NOT NULL,
    status      text        NOT NULL,
    reason      text,
    CONSTRAINT register_check_pk PRIMARY KEY (id),
    CONSTRAINT register_check_status_known CHECK (status IN ('CLEARED', 'SUPERVISED_ONLY', 'NOT_CLEARED'))
);
CREATE INDEX register_check_by_person ON register_check (person_id, at DESC);

-- One line at a time: the chain is checked here too, so that no other program can add a line that does not belong.
CREATE FUNCTION register_line() RETURNS trigger
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    before record;
    told jsonb := NEW.content::jsonb;
BEGIN
    PERFORM pg_advisory_xact_lock(7103001);
    SELECT number, hash, recorded INTO before
    FROM ${flyway:defaultSchema}.register_event ORDER BY number DESC LIMIT 1;
    IF NOT FOUND THEN
        SELECT 0::bigint AS number, decode(repeat('00', 32), 'hex') AS hash, '-infinity'::timestamptz AS recorded INTO before;
    END IF;
    IF NEW.content IS NULL THEN
        RAISE EXCEPTION 'a line of the register says something' USING ERRCODE = 'check_violation';
    END IF;
    IF NEW.number <> before.number + 1 OR NEW.previous <> before.hash OR NEW.recorded < before.recorded THEN
        RAISE EXCEPTION 'line % does not follow line % of the register', NEW.number, before.number
            USING ERRCODE = 'check_violation';
    END IF;
    IF NEW.effective <> (told ->> 'effective')::timestamptz
        OR NEW.content_hash <> sha256(NEW.salt || convert_to(NEW.content, 'UTF8'))
        OR NEW.hash <> sha256(convert_to(concat_ws(E'\n',
            'register',
            NEW.number,
            NEW.id,
            to_char(NEW.recorded AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"'),
            encode(NEW.content_hash, 'hex'),
            encode(NEW.previous, 'hex')), 'UTF8')) THEN
        RAISE EXCEPTION 'line % of the register is not sealed rightly', NEW.number USING ERRCODE = 'check_violation';
    END IF;
    RETURN NEW;
END;
$$;
CREATE TRIGGER register_event_line BEFORE INSERT ON register_event
    FOR EACH ROW EXECUTE FUNCTION register_line();

-- Who gives is neither the learner nor somebody who trained or observed this learner in the last 24 months, unless an
-- outside countersigner is named; and nobody is given more time than the register ever allows.
CREATE FUNCTION register_separation() RETURNS trigger
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    said jsonb := NEW.content::jsonb -> 'said';
    learner text := said ->> 'person';
    decider text := said ->> 'decider';
    countersigned boolean := said ->> 'countersigner' IS NOT NULL;
    zone text := coalesce((SELECT s.zone FROM ${flyway:defaultSchema}.school s), 'UTC');
    today date := (NEW.effective AT TIME ZONE zone)::date;
    since timestamptz := (today - interval '24 months') AT TIME ZONE zone;
    longest interval := CASE WHEN countersigned THEN interval '6 months' ELSE interval '36 months' END;
BEGIN
    IF decider IS NULL OR learner IS NULL OR decider = learner THEN
        RAISE EXCEPTION 'nobody decides about themselves' USING ERRCODE = 'check_violation';
    END IF;
    IF EXISTS (SELECT 1 FROM jsonb_array_elements_text(said -> 'evidence') named
               WHERE NOT EXISTS (SELECT 1 FROM ${flyway:defaultSchema}.register_event e
                                 WHERE e.id = named.value::uuid AND e.person_id = learner::uuid)) THEN
        RAISE EXCEPTION 'the evidence is not on record' USING ERRCODE = 'check_violation';
    END IF;
    IF (said ->> 'validThrough')::date > today + longest THEN
        RAISE EXCEPTION 'no clearance holds that long' USING ERRCODE = 'check_violation';
    END IF;
    IF NOT countersigned AND EXISTS (
        SELECT 1
        FROM (SELECT e.effective AS at, e.content::jsonb -> 'said' AS act
              FROM ${flyway:defaultSchema}.register_event e
              WHERE e.person_id = learner::uuid AND NOT EXISTS (
                  SELECT 1 FROM ${flyway:defaultSchema}.register_event c
                  WHERE c.kind = 'corrected' AND c.content::jsonb -> 'said' ->> 'event' = e.id::text)
              UNION ALL
              SELECT (c.content::jsonb -> 'said' ->> 'effective')::timestamptz,
                     c.content::jsonb -> 'said' -> 'replacement'
              FROM ${flyway:defaultSchema}.register_event c
              WHERE c.kind = 'corrected'
                AND c.content::jsonb -> 'said' -> 'replacement' ->> 'person' = learner) part
        WHERE part.at BETWEEN since AND NEW.effective
          AND part.act ->> 'type' IN
              ('training-given', 'respirator-trained', 'delta-done', 'observation-recorded', 'ppe-shown')
          AND decider IN (part.act ->> 'trainer', part.act ->> 'observer')) THEN
        RAISE EXCEPTION 'the decider trained or observed this learner in the last 24 months'
            USING ERRCODE = 'check_violation';
    END IF;
    RETURN NULL;
END;
$$;
CREATE CONSTRAINT TRIGGER register_event_separation AFTER INSERT ON register_event
    FOR EACH ROW WHEN (NEW.kind IN ('granted', 'reinstated')) EXECUTE FUNCTION register_separation();

-- Refuses what nobody may do. Lines keep their place and their hashes for ever; what they said may be erased, whole, by
-- the two functions below and by nothing else.
CREATE FUNCTION register_refuse() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp
AS $$
BEGIN
    IF TG_OP = 'TRUNCATE' AND EXISTS (SELECT 1 FROM ${flyway:defaultSchema}.school WHERE demo) THEN
        RETURN NULL;
    END IF;
    IF TG_OP = 'UPDATE' AND current_setting('riseandgel.erasing', true) = 'on' THEN
        IF TG_TABLE_NAME = 'register_event' THEN
            IF NEW.content IS NULL
                AND (NEW.number, NEW.id, NEW.recorded, NEW.content_hash, NEW.previous, NEW.hash)
                  = (OLD.number, OLD.id, OLD.recorded, OLD.content_hash, OLD.previous, OLD.hash) THEN
                RETURN NEW;
            END IF;
        ELSIF TG_TABLE_NAME = 'register_note' THEN
            IF NEW.words IS NULL
                AND (NEW.id, NEW.written_at, NEW.commitment) = (OLD.id, OLD.written_at, OLD.commitment) THEN
                RETURN NEW;
            END IF;
        END IF;
    END IF;
    RAISE EXCEPTION 'the register is only added to: % of % is refused', TG_OP, TG_TABLE_NAME
        USING ERRCODE = 'insufficient_privilege';
END;
$$;
CREATE TRIGGER register_event_kept BEFORE UPDATE OR DELETE ON register_event
    FOR EACH ROW EXECUTE FUNCTION register_refuse();
CREATE TRIGGER register_event_not_emptied BEFORE TRUNCATE ON register_event
    FOR EACH STATEMENT EXECUTE FUNCTION register_refuse();
CREATE TRIGGER register_note_kept BEFORE UPDATE OR DELETE ON register_note
    FOR EACH ROW EXECUTE FUNCTION register_refuse();
CREATE TRIGGER register_note_not_emptied BEFORE TRUNCATE ON register_note
    FOR EACH STATEMENT EXECUTE FUNCTION register_refuse();
CREATE TRIGGER sds_file_kept BEFORE UPDATE OR DELETE ON sds_file
    FOR EACH ROW EXECUTE FUNCTION register_refuse();
CREATE TRIGGER sds_file_not_emptied BEFORE TRUNCATE ON sds_file
    FOR EACH STATEMENT EXECUTE FUNCTION register_refuse();

-- Whether somebody is of age on a day, as was known at an instant; no date comes out. Of age from the 18th birthday on;
-- born on 29 February, from 1 March.
CREATE FUNCTION age_on(asked uuid, on_day date, known timestamptz) RETURNS text
    LANGUAGE sql
    STABLE
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
    SELECT coalesce((
        SELECT CASE WHEN on_day < CASE
                   WHEN extract(day FROM born + interval '18 years') = extract(day FROM born)
                   THEN (born + interval '18 years')::date
                   ELSE (born + interval '18 years')::date + 1 END
               THEN 'UNDER_18' ELSE 'ADULT' END
        FROM ${flyway:defaultSchema}.birth_date
        WHERE person_id = asked AND recorded <= known
        ORDER BY recorded DESC, event_id
        LIMIT 1), 'UNKNOWN');
$$;
REVOKE ALL ON FUNCTION age_on(uuid, date, timestamptz) FROM PUBLIC;

-- The date itself, for a safety lead, who is written down as having asked.
CREATE FUNCTION birth_date_for(asking uuid, asked uuid, at timestamptz) RETURNS date
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
BEGIN
    IF NOT EXISTS (SELECT 1 FROM ${flyway:defaultSchema}.person_role r
                   JOIN ${flyway:defaultSchema}.person p ON p.id = r.person_id
                   WHERE r.person_id = asking AND r.role = 'safety-lead' AND p.disabled_at IS NULL) THEN
        RAISE EXCEPTION 'dates of birth are for the safety lead' USING ERRCODE = 'insufficient_privilege';
    END IF;
    INSERT INTO ${flyway:defaultSchema}.audit_entry (id, at, actor, action, subject)
    VALUES (gen_random_uuid(), at, asking, 'birth-date-read', asked::text);
    RETURN (SELECT born FROM ${flyway:defaultSchema}.birth_date
            WHERE person_id = asked ORDER BY recorded DESC, event_id LIMIT 1);
END;
$$;
REVOKE ALL ON FUNCTION birth_date_for(uuid, uuid, timestamptz) FROM PUBLIC;

-- Erases free texts and date of birth of the person whom the last line says was anonymised.
CREATE FUNCTION register_anonymise() RETURNS integer
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    last record;
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
    RETURN notes;
END;
$$;
REVOKE ALL ON FUNCTION register_anonymise() FROM PUBLIC;

-- Erases what the lines said that the last line lists: only lines about people who left at least five years before that
-- last line and on whom no legal hold lies, and the corrections of these. Number, id, time of recording and hashes stay,
-- and so does the chain. Free texts, date of birth and questions at doors about them go too.
CREATE FUNCTION register_purge() RETURNS integer
    LANGUAGE plpgsql
    SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp
AS $$
DECLARE
    last record;
    wanted bigint[];
    gone uuid[];
    erased integer;
BEGIN
    SELECT kind, recorded, content::jsonb -> 'said' AS said INTO last
    FROM ${flyway:defaultSchema}.register_event ORDER BY number DESC LIMIT 1;
    IF last.kind IS DISTINCT FROM 'purged' THEN
        RAISE EXCEPTION 'only what the last line lists is purged' USING ERRCODE = 'check_violation';
    END IF;
    SELECT array_agg(n.value::bigint) INTO wanted FROM jsonb_array_elements_text(last.said -> 'numbers') n;
    IF EXISTS (
        SELECT 1 FROM ${flyway:defaultSchema}.register_event e
        WHERE e.number = ANY (wanted) AND (
            (e.person_id IS NULL AND NOT (e.kind = 'corrected' AND EXISTS (
                SELECT 1 FROM ${flyway:defaultSchema}.register_event t
                WHERE t.id = (e.content::jsonb -> 'said' ->> 'event')::uuid AND t.number = ANY (wanted))))
            OR (e.recorded > last.recorded - interval '5 years'
                AND e.kind NOT IN ('relation-ended', 'legal-hold', 'anonymised'))
            OR (e.person_id IS NOT NULL AND coalesce((SELECT h.content::jsonb -> 'said' ->> 'on' = 'true'
                         FROM ${flyway:defaultSchema}.register_event h
                         WHERE h.person_id = e.person_id AND h.kind = 'legal-hold'
                         ORDER BY h.number DESC LIMIT 1), false))
            OR (e.person_id IS NOT NULL AND NOT coalesce((SELECT (l.content::jsonb -> 'said' ->> 'on')::date <= last.recorded - interval '5 years'
                             FROM ${flyway:defaultSchema}.register_event l
                             WHERE l.person_id = e.person_id AND l.kind = 'relation-ended'
                             ORDER BY l.number DESC LIMIT 1), false)))) THEN
        RAISE EXCEPTION 'a line that is to be purged is still to be kept' USING ERRCODE = 'check_violation';
    END IF;
    SELECT array_agg(DISTINCT e.person_id) INTO gone
    FROM ${flyway:defaultSchema}.register_event e WHERE e.number = ANY (wanted) AND e.person_id IS NOT NULL;
    DELETE FROM ${flyway:defaultSchema}.register_check WHERE person_id = ANY (gone);
    DELETE FROM ${flyway:defaultSchema}.birth_date WHERE person_id = ANY (gone);
    PERFORM set_config('riseandgel.erasing', 'on', true);
    UPDATE ${flyway:defaultSchema}.register_note SET salt = NULL, words = NULL
    WHERE person_id = ANY (gone) AND words IS NOT NULL;
    UPDATE ${flyway:defaultSchema}.register_event SET effective = NULL, content = NULL, salt = NULL
    WHERE number = ANY (wanted) AND content IS NOT NULL;
    GET DIAGNOSTICS erased = ROW_COUNT;
    PERFORM set_config('riseandgel.erasing', 'off', true);
    RETURN erased;
END;
$$;
REVOKE ALL ON FUNCTION register_purge() FROM PUBLIC;

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT, INSERT ON register_event, register_note, sds_file, register_check TO "${app_role}";
        GRANT INSERT ON birth_date TO "${app_role}";
        GRANT SELECT, INSERT, UPDATE, DELETE ON register_answer TO "${app_role}";
        GRANT EXECUTE ON FUNCTION age_on(uuid, date, timestamptz), birth_date_for(uuid, uuid, timestamptz),
            register_anonymise(), register_purge() TO "${app_role}";
    END IF;
END;
$$;

-- The exercises in each person's open sittings. Practice reads them with the draw, in the same statement.
CREATE VIEW asked_in_check AS
    SELECT s.person_id, i.exercise_id
    FROM sitting s JOIN sitting_item i ON i.sitting_id = s.id
    WHERE s.handed_in_at IS NULL;

CREATE INDEX sitting_open ON sitting (person_id) WHERE handed_in_at IS NULL;

DO $$
BEGIN
    IF '${app_role}' <> current_user THEN
        GRANT SELECT ON asked_in_check TO "${app_role}";
    END IF;
END;
$$;

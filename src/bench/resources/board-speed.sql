-- Cohorts of 40 people; each person gave 80 answers in each of the 16 skills, two to a draw, over 40 days. Loaded in the order
-- in which a school would have given them, one fifth of them wrong.
SET session_replication_role = replica;
SET work_mem = '256MB';
SET synchronous_commit = off;
CREATE TEMPORARY TABLE skills AS SELECT unnest(ARRAY['safe-handling', 'exposure-arithmetic', 'cavity-volume', 'weighing',
    'batch-scaling', 'expansion', 'stick-marks-straight', 'stick-marks-tapered', 'rise-record', 'gelling-dose', 'gel-clock',
    'fill-plan', 'process-order', 'bake-and-dry', 'fault-finding', 'shrinkage-and-cost']) AS skill;
CREATE TEMPORARY TABLE learners AS SELECT n,
    ('00000000-0000-4000-b000-' || lpad(to_hex(n), 12, '0'))::uuid AS id,
    ('00000000-0000-4000-a000-' || lpad(to_hex((n - 1) / 40 + 1), 12, '0'))::uuid AS cohort
    FROM generate_series(1, :people) n;
INSERT INTO exercise_version (exercise_id, version, source_text, first_used) VALUES ('board-speed', '1', 'none', now());
INSERT INTO person (id, sign_in_name, display_name, password_hash, created_at)
    SELECT id, 'learner' || n, 'Learner ' || n, 'none', now() - interval '90 days' FROM learners;
INSERT INTO person_role (person_id, role) SELECT id, 'apprentice' FROM learners;
INSERT INTO cohort (id, name, created_at)
    SELECT cohort, 'Cohort ' || min(n), now() - interval '90 days' FROM learners GROUP BY cohort;
INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at)
    SELECT gen_random_uuid(), cohort, id, 'learns', now() - interval '90 days' FROM learners;
INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at)
    SELECT gen_random_uuid(), cohort, :instructor, 'teaches', now() - interval '90 days' FROM learners WHERE n = 1;
INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at, finished_at)
    SELECT gen_random_uuid(), l.id, 'board-speed', '1', s.skill, 1 + day % 3, l.n * 1000 + day,
        now() - day * interval '1 day', now() - day * interval '1 day' + interval '5 minutes'
    FROM generate_series(40, 1, -1) day, learners l, skills s ORDER BY day DESC, s.skill, l.n;
INSERT INTO answer (draw_id, part, person_id, typed, read_value, read_unit, read_figures, verdict, expected, shown_at,
        answered_at, core_version, confidence)
    SELECT d.id, part, d.person_id, '125 g', '125', 'g', '3', CASE WHEN (d.seed + part) % 5 = 0 THEN 'WRONG' ELSE 'RIGHT' END,
        '125 g', d.drawn_at, d.drawn_at + (1 + part) * interval '1 minute', 'board-speed', 'FAIRLY'
    FROM draw d, generate_series(0, 1) part WHERE d.exercise_id = 'board-speed' ORDER BY d.drawn_at, d.skill;
INSERT INTO skill_standing (person_id, skill, answers, right_answers, average, days, last_day, last_at, last_verdict,
        wrong_in_row, right_in_row, offered, rung, run, first_day)
    SELECT a.person_id, d.skill, count(*), count(*) FILTER (WHERE a.verdict = 'RIGHT'), 0.8,
        count(DISTINCT d.drawn_at::date), max(d.drawn_at)::date, max(a.answered_at), 'RIGHT', 0, 2, 3, 3, 2,
        min(d.drawn_at)::date
    FROM answer a JOIN draw d ON d.id = a.draw_id WHERE d.exercise_id = 'board-speed' GROUP BY 1, 2;
INSERT INTO exercise_standing (person_id, skill, exercise_id, answers, wrong_in_row, last_at, held, last_held, held_at)
    SELECT s.person_id, s.skill, 'board-speed-' || e, 20, 0, s.last_at,
        held, held, CASE WHEN held IS NOT NULL THEN s.last_at END
    FROM skill_standing s CROSS JOIN generate_series(1, 4) e
    CROSS JOIN LATERAL (SELECT CASE WHEN hashtext(s.person_id::text || s.skill || e) % 40 = 0 THEN 'WRONG' END AS held) h
    WHERE s.person_id IN (SELECT id FROM learners);
RESET session_replication_role;
RESET work_mem;
RESET synchronous_commit;
VACUUM ANALYZE;
CHECKPOINT;

-- Exercises that are done at the bench with the salt itself. They are begun on purpose and stand beside the open draw of
-- their skill and level, so that a clearance that ends meanwhile keeps nobody from practising.

ALTER TABLE draw ADD COLUMN at_bench boolean NOT NULL DEFAULT false;

DROP INDEX draw_open_once;
CREATE UNIQUE INDEX draw_open_once ON draw (person_id, skill, level)
    WHERE finished_at IS NULL AND session_id IS NULL AND NOT at_bench;
CREATE UNIQUE INDEX draw_at_bench_once ON draw (person_id, exercise_id) WHERE finished_at IS NULL AND at_bench;

-- A change of a mark belongs to the answer that it was made for: the one that had been kept so often. Null in lines from
-- before, which stand whatever came after.
ALTER TABLE graded_mark_change ADD COLUMN saves integer;
ALTER TABLE graded_mark_change ADD CONSTRAINT graded_mark_change_saves CHECK (saves >= 0);

-- Whoever gets more time after the right answers were told goes on with fresh numbers: the open try is ended, and one more
-- can be begun.
ALTER TABLE graded_extension ADD COLUMN fresh_try boolean NOT NULL DEFAULT false;
ALTER TABLE graded_work DROP CONSTRAINT graded_work_nth;
ALTER TABLE graded_work ADD CONSTRAINT graded_work_nth CHECK (nth BETWEEN 1 AND 99);

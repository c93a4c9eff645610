package org.riseandgel.course;

import java.util.List;

/** The course as a path: what its page shows. goOn is null where nobody stopped halfway. */
public record CourseView(List<StageLine> stages, boolean showsRead, int problems, ReadingPlaces.Place goOn) {

    /** A stage on the path; one without lessons is not written yet. Its gate says whether it is open to who looks. */
    public record StageLine(
            int number,
            String id,
            String title,
            String summary,
            List<LessonLine> lessons,
            List<SkillLine> skills,
            List<SimulationLine> simulations,
            StageGate gate) {
        public boolean isWritten() {
            return !lessons.isEmpty();
        }

        /** How many of the lessons were read. */
        public long getRead() {
            return lessons.stream().filter(LessonLine::read).count();
        }
    }

    /** A lesson in a list, with whether the person who looks has read it. */
    public record LessonLine(String title, String address, int minutes, boolean read) {}

    /** A skill in a list. */
    public record SkillLine(String id, String title, String about) {}

    /** A simulation in a list. */
    public record SimulationLine(String id, String title, int minutes) {}

    /** A page of the bench. */
    public record SheetLine(String title, String address) {}
}

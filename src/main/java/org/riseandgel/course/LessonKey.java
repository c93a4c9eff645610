package org.riseandgel.course;

/** Which lesson: its stage and its own name within the stage. */
public record LessonKey(String stage, String lesson) {
    /** The one text that stands for the lesson in the record of what was read. */
    public String id() {
        return stage + "/" + lesson;
    }

    /** The address of its page. */
    public String address() {
        return "/course/" + id();
    }
}

package org.riseandgel.course;

/** Something an apprentice can learn to do: its stable name, title, the stage that teaches it, and one sentence. */
public record Skill(String id, String title, String stage, String about) {}

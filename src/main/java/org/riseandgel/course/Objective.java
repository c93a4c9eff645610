package org.riseandgel.course;

/** Something everybody must know or be able to do about a hazard: its stable name and its words. */
public record Objective(String id, String title) {}

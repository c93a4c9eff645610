package org.riseandgel.course;

/** A drawing that passed the check: its frame and its inner markup, rebuilt from allowed elements only. */
record Figure(String file, String viewBox, String markup) {}

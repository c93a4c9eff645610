package org.riseandgel.exercise;

/** A drawing that passed the check: its frame and its inner markup, rebuilt from allowed elements only. */
public record Figure(String file, String viewBox, String markup) {}

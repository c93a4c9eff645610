package org.riseandgel.exercise;

/** What is wrong in a content file, where, and what would be right. Lines count from 1; 0 means the whole file. */
public record ContentProblem(String file, int line, String field, String message) {}

package org.riseandgel.bench;

/** What is wrong with one field, and what would be right, in one or two plain sentences. */
public record FieldProblem(String field, String message) {}

package org.riseandgel.platform.web;

/** What is wrong with one field of a form and what would be right; the field is the id of its control. */
public record Problem(String field, String message) {}

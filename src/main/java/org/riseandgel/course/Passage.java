package org.riseandgel.course;

/**
 * A piece of a lesson in plain words.
 *
 * @param heading the words of its heading; empty before the first
 * @param anchor where it begins on the page; empty before the first heading
 */
record Passage(String heading, String anchor, String text) {}

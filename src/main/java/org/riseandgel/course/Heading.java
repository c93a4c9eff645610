package org.riseandgel.course;

/** A heading of a lesson, for the list of contents: its anchor on the page and its words. */
public record Heading(int level, String anchor, String words) {
    /** Sets the anchors of headings apart from every other id on a page. */
    static final String PREFIX = "part-";
}

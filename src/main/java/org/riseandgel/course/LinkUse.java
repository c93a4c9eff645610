package org.riseandgel.course;

import org.commonmark.node.Link;

/** A link of a lesson and the line on which it stands. */
record LinkUse(Link link, int line) {}

package org.riseandgel.course;

import org.commonmark.node.CustomNode;

/** The place in the running text where a lesson says whom this school calls in an emergency. */
final class EmergencyCall extends CustomNode {
    /** What the text writes before the point; no worked block may have this name. */
    static final String OWNER = "school";
    /** What the text writes after the point. */
    static final String NAME = "emergency";
}

package org.riseandgel.course;

import org.commonmark.node.CustomNode;

/** A number in the running text that a worked example of the same lesson gives. */
final class InlineNumber extends CustomNode {
    final Worked worked;
    final String result;

    InlineNumber(Worked worked, String result) {
        this.worked = worked;
        this.result = result;
    }
}

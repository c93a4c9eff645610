package org.riseandgel.practice;

import java.util.UUID;

/** What comes when somebody wants to practise. */
public sealed interface Begin {
    /** A draw, fresh or open. */
    record Draw(UUID id) implements Begin {}

    /** A worked example has to be seen first: of the skill at its foot, or of an exercise that is held. */
    record Example(String exercise) implements Begin {}

    /** The stage that teaches the skill is not open yet. */
    record Shut(String stage) implements Begin {}
}

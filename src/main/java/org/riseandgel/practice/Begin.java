package org.riseandgel.practice;

import java.util.UUID;

/** What comes when somebody wants to practise. */
public sealed interface Begin {
    /** Where it is. */
    String address();

    /** A draw, fresh or open. */
    record Draw(UUID id) implements Begin {
        @Override
        public String address() {
            return DrawPages.address(id);
        }
    }

    /** A worked example has to be seen first: of the skill at its foot, or of an exercise that is held. */
    record Example(String exercise) implements Begin {
        @Override
        public String address() {
            return "/practice/examples/" + exercise;
        }
    }

    /** An open check of the person asks what would be practised; it waits until the check is handed in. */
    record Check() implements Begin {
        @Override
        public String address() {
            return WaitsForCheck.ADDRESS;
        }
    }

    /** The exercise is done at the bench with the salt, and the register says no. */
    record NotAllowed(String exercise) implements Begin {
        @Override
        public String address() {
            return BenchGatePages.address(exercise);
        }
    }

    /** The stage that teaches the skill is not open yet. */
    record Shut(String stage) implements Begin {
        @Override
        public String address() {
            return "/course/" + stage;
        }
    }
}

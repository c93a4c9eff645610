package org.riseandgel.account.signin;

import java.util.UUID;

/** How a try with a password went. */
public record Attempt(Outcome outcome, UUID person, long waitSeconds) {
    /** The ways a try can go. */
    public enum Outcome {
        RIGHT,
        WRONG,
        WAIT,
        ASK_OFFICE
    }

    static Attempt right(UUID person) {
        return new Attempt(Outcome.RIGHT, person, 0);
    }

    static Attempt wrong() {
        return new Attempt(Outcome.WRONG, null, 0);
    }

    static Attempt waiting(long seconds) {
        return seconds == Long.MAX_VALUE
                ? new Attempt(Outcome.ASK_OFFICE, null, 0)
                : new Attempt(Outcome.WAIT, null, seconds);
    }

    /** Whether the password was the right one. */
    public boolean isRight() {
        return outcome == Outcome.RIGHT;
    }

    /** What to tell the person; the same words whether the name is known or not. */
    public String message() {
        return switch (outcome) {
            case RIGHT -> "";
            case WRONG ->
                "This name and password do not go together. Check both and type them again. A one-time password"
                        + " works for 14 days; the office can give you a new one.";
            case WAIT ->
                "There were several failed tries. Wait "
                        + waitSeconds
                        + (waitSeconds == 1 ? " second" : " seconds")
                        + ", then try again. Nobody is locked out.";
            case ASK_OFFICE -> "There were 100 failed tries in a row. Ask the office for a new one-time password.";
        };
    }
}

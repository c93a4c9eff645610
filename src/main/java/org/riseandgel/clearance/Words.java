package org.riseandgel.clearance;

import org.riseandgel.clearance.rule.Need;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;

/** Answers, reasons and preconditions as people read them. Never “certified”, never “licensed”. */
public final class Words {
    private Words() {}

    /** The answer in a sentence. */
    public static String of(Standing standing) {
        return switch (standing.status()) {
            case CLEARED -> "Cleared.";
            case SUPERVISED_ONLY -> "Only with the named supervisor there.";
            case NOT_CLEARED -> standing.firstReason().map(Words::of).orElse("Not cleared.");
        };
    }

    /** The word for an answer. */
    public static String of(Status status) {
        return switch (status) {
            case CLEARED -> "cleared";
            case SUPERVISED_ONLY -> "supervised only";
            case NOT_CLEARED -> "not cleared";
        };
    }

    /** Why somebody is not cleared. */
    public static String of(Reason reason) {
        return switch (reason) {
            case UNREADABLE -> "The register cannot be read now, so nobody is cleared.";
            case NO_SUCH_SCOPE -> "Nobody is cleared for this task with this substance in this room.";
            case NEVER_GRANTED -> "No clearance was given for this.";
            case WITHDRAWN -> "The clearance was withdrawn.";
            case SUSPENDED -> "The clearance is suspended.";
            case PARTY_WITHDRAWN -> "Suspended: a trainer or observer lost the own clearance.";
            case RESPIRATOR_LAPSED -> "Suspended: fit test or respirator training ran out.";
            case SDS_DELTA_OVERDUE -> "Suspended: training on the changed safety data sheet is overdue.";
            case EVIDENCE_FELL -> "What the clearance rests on was corrected and does not carry it any more.";
            case AGE_UNKNOWN -> "The age is not on record.";
            case UNDER_18 -> "Under 18.";
            case TURNED_18 -> "Turned 18: a new decision is needed.";
            case SUPERVISOR_NOT_CLEARED -> "The named supervisor is not cleared.";
            case NOT_FIT_FOR_TASK -> "Fitness for the task is not on record.";
            case DELTA_OVERDUE -> "An additional training is overdue.";
            case RENEWAL_OVERDUE -> "The policy changed and the renewal is overdue.";
            case EXPIRED -> "The clearance has expired.";
        };
    }

    /** What to do about it, by the one who stands at the door or reads the own record. */
    public static String next(Reason reason) {
        return switch (reason) {
            case UNREADABLE -> "Nobody works with it until the register is right again: tell the safety lead.";
            case NO_SUCH_SCOPE -> "Nobody does this here; ask the safety lead.";
            case NEVER_GRANTED ->
                "Training, two knowledge checks, the practicals and a decision come first: ask an instructor.";
            case WITHDRAWN -> "Only a new grant gives it back, with fresh checks and practicals: ask an instructor.";
            case SUSPENDED, PARTY_WITHDRAWN ->
                "The practicals again, before an observer, and then somebody else’s decision give it"
                        + " back: ask an instructor.";
            case RESPIRATOR_LAPSED ->
                "Renew fit test and training on the respirator; then the practicals and a decision.";
            case SDS_DELTA_OVERDUE -> "Have the training on the changed sheet; then the practicals and a decision.";
            case EVIDENCE_FELL -> "What does not count any more is done again and decided anew: ask an instructor.";
            case AGE_UNKNOWN -> "The safety lead looks at a paper with the date of birth.";
            case UNDER_18 -> "Where the law allows it, the safety lead names a supervisor; never alone.";
            case TURNED_18 -> "A new grant, with fresh checks and practicals: ask an instructor.";
            case SUPERVISOR_NOT_CLEARED -> "The supervisor’s own clearance comes first: ask the safety lead.";
            case NOT_FIT_FOR_TASK ->
                "A paper that says fit for the task, yes or no and nothing else, is entered first: ask an"
                        + " instructor.";
            case DELTA_OVERDUE -> "Have the additional training that was asked for: ask an instructor.";
            case RENEWAL_OVERDUE, EXPIRED -> "Renew it, with fresh checks and practicals: ask an instructor.";
        };
    }

    /** What has to be done so that a reason does not come to stand. */
    public static String ahead(Reason reason) {
        return switch (reason) {
            case SDS_DELTA_OVERDUE -> "have the training on the changed safety data sheet.";
            case DELTA_OVERDUE -> "have the additional training that is asked for, or do the work before.";
            case RENEWAL_OVERDUE -> "renew it, since the policy changed.";
            case RESPIRATOR_LAPSED -> "renew the fit test or the training on the respirator.";
            case SUPERVISOR_NOT_CLEARED -> "the supervisor's own clearance ends and has to be renewed.";
            case UNDER_18, AGE_UNKNOWN -> "the permission to learn under a supervisor ends.";
            default -> of(reason);
        };
    }

    /** A precondition as the decision page names it. */
    public static String of(Need need) {
        return switch (need) {
            case SCOPE_OPEN -> "Scope in use";
            case AGE -> "Age";
            case TRAINING -> "Training";
            case KNOWLEDGE -> "Knowledge check";
            case OBSERVATION -> "Observed practical";
            case PPE -> "Protective equipment shown";
            case SDS_READ -> "Current safety data sheet read";
            case RESPIRATOR -> "Respirator";
            case FIT_FOR_TASK -> "Fit for the task";
            case DELTA_DONE -> "Additional training";
            case DECIDER_QUALIFIED -> "Decider qualified";
            case SEPARATION -> "Decider took no part";
            case NOT_SUSPENDED -> "Not suspended";
            case SUSPENDED -> "Suspended";
        };
    }
}

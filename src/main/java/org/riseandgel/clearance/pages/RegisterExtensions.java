package org.riseandgel.clearance.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.Locale;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.NeedResult;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Trigger;

/** What the templates of the register ask of the register's words. */
@TemplateExtension
final class RegisterExtensions {
    private RegisterExtensions() {}

    static String answerWord(Standing standing) {
        return Words.of(standing.status());
    }

    static String answerWords(Standing standing) {
        return Words.of(standing);
    }

    /** What to do about a no; empty for anything else. */
    static String nextWords(Standing standing) {
        return standing.firstReason().map(Words::next).orElse("");
    }

    /** The mark beside an answer: shapes tell them apart as well as the words do. */
    static String answerIcon(Standing standing) {
        if (standing.status() == Status.CLEARED) {
            return "right";
        }
        return standing.status() == Status.SUPERVISED_ONLY ? "begun" : "wrong";
    }

    static String aheadWords(Reason reason) {
        return Words.ahead(reason);
    }

    static boolean holding(Standing standing) {
        return standing.status() != Status.NOT_CLEARED;
    }

    static String needWord(NeedResult need) {
        return Words.of(need.need());
    }

    static String formWord(Form form) {
        return TaskWords.of(form);
    }

    static String taskWords(Scope scope) {
        return String.join(
                ", ",
                scope.tasks().stream()
                        .map(TaskWords::of)
                        .map(word -> word.toLowerCase(Locale.ROOT))
                        .toList());
    }

    static String stageWord(Register.Stage stage) {
        return switch (stage) {
            case IN_TRAINING -> "in training";
            case KNOWLEDGE_PASSED -> "knowledge shown";
            case OBSERVED -> "observed";
            case DECIDED -> "decided";
        };
    }

    static String actWord(Act act) {
        return switch (act) {
            case TRAIN -> "train";
            case OBSERVE -> "observe";
            case DECIDE -> "decide";
        };
    }

    /** The name of the field in which a step's outcome is sent. */
    static String fieldName(Checklist.Step step) {
        return "step-" + step.id();
    }

    static String outcomeWord(StepSeen.Outcome outcome) {
        return switch (outcome) {
            case UNPROMPTED -> "Unprompted";
            case PROMPTED -> "Prompted";
            case NOT_DONE -> "Not done";
            case NOT_SEEN -> "Not seen";
        };
    }

    static String triggerWord(Trigger trigger) {
        return switch (trigger) {
            case INCIDENT -> "An incident";
            case NEAR_MISS -> "A near miss";
            case UNSAFE_ACT -> "An unsafe act was seen";
            case RECALL_FAILED -> "A recall check failed on something critical";
            case RESPIRATOR_LAPSED -> "Fit test or respirator training ran out";
            case PARTY_WITHDRAWN -> "A trainer or observer lost the own clearance";
            case SDS_DELTA_OVERDUE -> "Training on a changed safety data sheet is overdue";
            case OTHER -> "Something else";
        };
    }
}

package org.riseandgel.clearance;

import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Judgement;
import org.riseandgel.clearance.rule.Need;
import org.riseandgel.clearance.rule.NeedResult;

/**
 * Two people, not one who writes for two. A paper may be entered by somebody else than its observer or trainer; whoever
 * entered it does not decide on it, or else one person alone could name others and clear whom they like.
 */
final class Hands {
    private static final String WROTE =
            "You wrote down a training, practical or equipment that this rests on; somebody else decides.";

    private Hands() {}

    /** The judgement, not met where the decider wrote down what somebody else is said to have seen or taught. */
    static Judgement apart(Judgement judged, Histories.Known known, UUID decider) {
        boolean wrote = !judged.singleInstructor()
                && known.events().stream()
                        .filter(event -> judged.evidence().contains(event.id()))
                        .anyMatch(event -> isSeenBySomebody(event.body()) && decider.equals(event.recordedBy()));
        return wrote ? refused(judged) : judged;
    }

    private static boolean isSeenBySomebody(Body body) {
        return body instanceof Evidence.TrainingGiven
                || body instanceof Evidence.RespiratorTrained
                || body instanceof Evidence.ObservationRecorded
                || body instanceof Evidence.PpeShown;
    }

    private static Judgement refused(Judgement judged) {
        return new Judgement(
                judged.needs().stream()
                        .map(need -> need.need() == Need.SEPARATION && need.met()
                                ? new NeedResult(Need.SEPARATION, false, WROTE, need.evidence())
                                : need)
                        .toList(),
                judged.singleInstructor(),
                judged.supervisor(),
                judged.validThrough(),
                judged.renews(),
                judged.sdsRevision(),
                judged.policy());
    }
}

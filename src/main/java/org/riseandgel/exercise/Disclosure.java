package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.Quantity;

/**
 * Whether what is shown before an answer gives that answer away: a step shown beforehand, or the working of an earlier
 * part, which is shown once that part is answered.
 */
final class Disclosure {
    private static final double HAIR = 1e-9;

    private final DrawnNumbers drawn;
    private final Complaint complaint;

    private Disclosure(DrawnNumbers drawn, Complaint complaint) {
        this.drawn = drawn;
        this.complaint = complaint;
    }

    /** Takes a complaint about an entry of a list of the file. */
    interface Complaint {
        void about(String list, int index, String message);
    }

    static void check(DrawnNumbers drawn, Complaint complaint) {
        Disclosure disclosure = new Disclosure(drawn, complaint);
        disclosure.givenSteps();
        disclosure.orderOfParts();
    }

    private void givenSteps() {
        List<ValueRef.OfStep> given = drawn.template().givenSteps();
        for (int i = 0; i < given.size(); i++) {
            Outcome.Step step = Working.step(drawn, given.get(i)).orElseThrow();
            for (DrawnPart part : drawn.parts()) {
                if (shows(step, right(part))) {
                    complaint.about(
                            "given-steps",
                            i,
                            "Shows the answer of the part %s; show only steps before it."
                                    .formatted(part.part().id()));
                    break;
                }
            }
        }
    }

    private void orderOfParts() {
        for (int later = 1; later < drawn.parts().size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (workingShows(earlier, later)) {
                    complaint.about(
                            "ask",
                            later,
                            "The working of the part %s already shows this answer; ask in the order of the working."
                                    .formatted(drawn.part(earlier).part().id()));
                    break;
                }
            }
        }
    }

    private boolean workingShows(int earlier, int later) {
        Quantity answer = right(drawn.part(later));
        return Working.upTo(drawn, drawn.part(earlier).part().of()).stream().anyMatch(step -> shows(step, answer));
    }

    private Quantity right(DrawnPart part) {
        ValueRef.Worked of = part.part().of();
        return PartMaker.value(of, drawn.outcomes().get(of.work())).orElseThrow();
    }

    private static boolean shows(Outcome.Step step, Quantity answer) {
        return same(step.value(), answer) || step.in().stream().anyMatch(in -> same(in.quantity(), answer));
    }

    private static boolean same(Quantity one, Quantity other) {
        double difference = Math.abs(one.inBase() - other.inBase());
        return one.kind() == other.kind() && difference <= HAIR * Math.abs(other.inBase());
    }
}

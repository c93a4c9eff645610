package org.riseandgel.core.gel;

import java.util.ArrayList;
import java.util.List;
import org.riseandgel.core.statistics.ConjugateRegression;

/**
 * Weights that keep a slip of the pen from moving the forecast: a record that lies more than c = 3 scales from what all
 * others forecast for it counts with the weight c ÷ distance, all others fully. So the pull of any record is bounded (P.
 * J. Huber, Annals of Mathematical Statistics 35, 1964; from memory), each record is judged by the others and never by
 * itself, and the noise of what is weighed down is taken to be larger, not left out.
 *
 * <p>With fewer than eight records there is no crowd to stand out from: all count fully, and a school that differs from
 * the defaults is believed.
 */
final class SteadyWeights {
    static final int FEWEST = 8;
    private static final double FAR = 3;
    private static final int MOST_ROUNDS = 30;
    private static final double SETTLED = 1e-9;

    private final ConjugateRegression belief;

    SteadyWeights(ConjugateRegression belief) {
        this.belief = belief;
    }

    /** The rows with their weights. */
    List<ConjugateRegression.Row> of(List<ConjugateRegression.Row> rows) {
        List<ConjugateRegression.Row> weighed = rows;
        for (int round = 0; rows.size() >= FEWEST && round < MOST_ROUNDS; round++) {
            List<ConjugateRegression.Row> next = reweighed(weighed);
            boolean settled = isSettled(weighed, next);
            weighed = next;
            if (settled) {
                break;
            }
        }
        return weighed;
    }

    private List<ConjugateRegression.Row> reweighed(List<ConjugateRegression.Row> rows) {
        ConjugateRegression all = learned(belief, rows);
        List<ConjugateRegression.Row> next = new ArrayList<>(rows.size());
        for (ConjugateRegression.Row row : rows) {
            double distance = Math.abs(all.without(row).at(row.x()).distance(row.y()));
            next.add(row.weighing(distance > FAR ? FAR / distance : 1));
        }
        return next;
    }

    private static boolean isSettled(List<ConjugateRegression.Row> before, List<ConjugateRegression.Row> after) {
        for (int i = 0; i < before.size(); i++) {
            if (Math.abs(before.get(i).weight() - after.get(i).weight()) > SETTLED) {
                return false;
            }
        }
        return true;
    }

    static ConjugateRegression learned(ConjugateRegression belief, List<ConjugateRegression.Row> rows) {
        ConjugateRegression learned = belief;
        for (ConjugateRegression.Row row : rows) {
            learned = learned.with(row);
        }
        return learned;
    }
}

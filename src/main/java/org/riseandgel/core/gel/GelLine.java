package org.riseandgel.core.gel;

import java.util.List;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.statistics.ConjugateRegression;
import org.riseandgel.core.statistics.ReadingNoise;

/**
 * The gel formula as a straight line: y = ln(t ÷ 1 min) on 1, ln(d/d₀) and 1000 K·(1/T − 1/T₀), with the coefficients ln
 * t₀, −a and Ea ÷ R ÷ 1000 K.
 */
final class GelLine {
    /** Exact by definition of the SI, 2019: k·N. */
    private static final double KELVINS = 1000;

    private final GelPrior prior;

    GelLine(GelPrior prior) {
        this.prior = prior;
    }

    ConjugateRegression belief() {
        double deviation = new PriorScatter(prior).ofOneGel() / StrictMath.sqrt(1 + 1 / prior.records());
        return ConjugateRegression.believing(
                List.of(
                        new ConjugateRegression.Belief(
                                StrictMath.log(prior.middle().inMinutes()), 1 / StrictMath.sqrt(prior.records())),
                        new ConjugateRegression.Belief(-prior.exponent(), prior.exponentDeviation() / deviation),
                        new ConjugateRegression.Belief(
                                prior.activation() / GelModel.GAS_CONSTANT,
                                prior.activationDeviation() / GelModel.GAS_CONSTANT / deviation)),
                new ReadingNoise(deviation, prior.scatterRecords()));
    }

    List<Double> at(Php dose, Temperature temperature) {
        double reference = prior.dose().inPartsPerHundred();
        return List.of(
                1.0,
                StrictMath.log(GelRecord.checked(dose).inPartsPerHundred() / reference),
                KELVINS / GelRecord.checked(temperature).inKelvins()
                        - KELVINS / prior.temperature().inKelvins());
    }

    ConjugateRegression.Row row(GelRecord record) {
        return new ConjugateRegression.Row(
                at(record.dose(), record.temperature()),
                StrictMath.log(record.gelTime().inMinutes()),
                1);
    }

    /** Ea in kJ/mol from its coefficient: coefficient × 1000 K × R, J to kJ. */
    double activation(double coefficient) {
        return coefficient * GelModel.GAS_CONSTANT;
    }
}

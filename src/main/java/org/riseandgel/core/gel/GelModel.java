package org.riseandgel.core.gel;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.ConjugateRegression;
import org.riseandgel.core.statistics.Interval;
import org.riseandgel.core.statistics.StudentForecast;

/**
 * When foam gels: ln t = ln t₀ − a·ln(d/d₀) + (Ea/R)·(1/T − 1/T₀) + scatter.
 *
 * <p>t is the time from adding the agent to the gel in min, d the dose in php, T the foam's temperature in K, R = 8.314462618
 * J/(mol·K); t₀, a and Ea are believed beforehand ({@link GelPrior}) and learned from records by conjugate Bayesian
 * regression ({@link ConjugateRegression}), a record that stands out being weighed down once there are eight. The order
 * of the records is of no account. A forecast is always an interval: Student's t on ln t.
 *
 * <p>The form is common practice in kinetics (a power of concentration, Arrhenius); that it holds for this foam is a
 * teaching assumption, no source.
 */
public final class GelModel {
    /** R, in J/(mol·K): exact since 2019 as 8.314462618 to ten figures (CODATA, from memory). */
    public static final double GAS_CONSTANT = 8.314462618;

    private static final Comparator<GelRecord> IN_ORDER = Comparator.comparingDouble(
                    (GelRecord record) -> record.dose().inPartsPerHundred())
            .thenComparingDouble(record -> record.temperature().inCelsius())
            .thenComparingDouble(record -> record.gelTime().inSeconds());

    private final GelLine line;
    private final ConjugateRegression learned;
    private final List<Weighed> records;

    /** A record and the weight it was given, more than 0 and at most 1; below 1 it stood out. */
    public record Weighed(GelRecord record, double weight) {}

    private GelModel(GelLine line, ConjugateRegression learned, List<Weighed> records) {
        this.line = line;
        this.learned = learned;
        this.records = List.copyOf(records);
    }

    /** The belief alone. */
    public static GelModel believing(GelPrior prior) {
        return learned(prior, List.of());
    }

    /** The belief and what records in any order have taught. */
    public static GelModel learned(GelPrior prior, List<GelRecord> records) {
        GelLine line = new GelLine(prior);
        ConjugateRegression belief = line.belief();
        List<GelRecord> sorted = records.stream().sorted(IN_ORDER).toList();
        List<ConjugateRegression.Row> rows =
                new SteadyWeights(belief).of(sorted.stream().map(line::row).toList());
        List<Weighed> weighed = IntStream.range(0, rows.size())
                .mapToObj(i -> new Weighed(sorted.get(i), rows.get(i).weight()))
                .toList();
        return new GelModel(line, SteadyWeights.learned(belief, rows), weighed);
    }

    /**
     * When a batch will gel.
     *
     * @param dose of gelling agent, 1 to 100 php
     * @param temperature of the foam, 0 to 50 °C
     * @param probability of the interval, more than 0 and less than 1
     * @throws OutOfRangeException outside these
     */
    public GelForecast forecast(Php dose, Temperature temperature, double probability) {
        StudentForecast logarithm = logarithm(dose, temperature);
        Interval interval = logarithm.interval(probability);
        return new GelForecast(
                minutes(interval.low()), minutes(logarithm.location()), minutes(interval.high()), probability);
    }

    /** The probability that the batch has gelled by a time after the agent was added; ranges as for a forecast. */
    public double chanceGelledBy(TimeSpan time, Php dose, Temperature temperature) {
        StudentForecast logarithm = logarithm(dose, temperature);
        return time.inSeconds() == 0 ? 0 : logarithm.below(StrictMath.log(time.inMinutes()));
    }

    /** t₀ as learned: the median at the reference dose and temperature. */
    public TimeSpan referenceTime() {
        return minutes(learned.coefficients().get(0));
    }

    /** a as learned. */
    public double doseExponent() {
        return -learned.coefficients().get(1);
    }

    /** Ea as learned, in kJ/mol. */
    public double activationEnergy() {
        return line.activation(learned.coefficients().get(2));
    }

    /** The scatter of ln t between batches made alike, as learned. */
    public double scatter() {
        return learned.deviation();
    }

    /** The records it learned from, with their weights, sorted by dose, temperature and time. */
    public List<Weighed> records() {
        return records;
    }

    private StudentForecast logarithm(Php dose, Temperature temperature) {
        return learned.at(line.at(dose, temperature));
    }

    /** A forecast may be as wide as it likes, but not beyond a hair of a second and a century. */
    private static TimeSpan minutes(double logarithm) {
        return TimeSpan.ofMinutes(StrictMath.exp(Math.max(-20, Math.min(18, Checks.finite("ln t", logarithm)))));
    }
}

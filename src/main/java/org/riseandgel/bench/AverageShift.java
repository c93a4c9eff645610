package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM_PER_CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.riseandgel.core.air.FluorideInAir;
import org.riseandgel.core.air.Fluorosilicate;
import org.riseandgel.core.air.Shift;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** The average over eight hours of a day in different air, as fluoride against the limit. */
public final class AverageShift implements Calculation {
    static final String MEASURED_AS = "measuredAs";
    static final String AS_FLUORIDE = "fluoride";
    static final String SPELLS = "spells";
    static final String AVERAGE = "average";
    static final String AGAINST_LIMIT = "againstLimit";

    private static final String PLAIN_AVERAGE = "saltAverage";
    private static final TimeSpan REFERENCE = TimeSpan.ofHours(8);
    private static final double LEAST = 0.000_1;
    private static final double AIR_STEP = 0.01;

    @Override
    public String id() {
        return "shift-exposure";
    }

    @Override
    public String title() {
        return "Air over a working day";
    }

    @Override
    public String purpose() {
        return "The average over eight hours of what was in the air, as the limit counts it.";
    }

    @Override
    public Task task() {
        return Task.SALT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Choice(
                        MEASURED_AS,
                        "The numbers are given as",
                        "The limit counts fluoride alone, and only part of the salt is fluoride.",
                        List.of(
                                new Input.Option(AS_FLUORIDE, "fluoride (as F)"),
                                new Input.Option(SaltInputs.SODIUM, "sodium fluorosilicate"),
                                new Input.Option(SaltInputs.POTASSIUM, "potassium fluorosilicate"))),
                new Input.Readings(
                        SPELLS,
                        "What was breathed, and for how long",
                        "A spell to a line: in the air; hours, as in 0.8 mg/m³; 0.5 h. Leave clean air out: it counts as 0.",
                        List.of(
                                new Input.Column("in the air", MILLIGRAM_PER_CUBIC_METRE, LEAST, 10_000),
                                new Input.Column("time", HOUR, 0.01, 24)),
                        List.of(List.of(1.6, 0.5), List.of(0.6, 1.5), List.of(0.2, 2.0))));
    }

    @Override
    public List<Finding> findings() {
        return List.of(new Finding(AGAINST_LIMIT, "Against the limit"));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(AVERAGE, "Average over 8 hours, as fluoride (F)", MILLIGRAM_PER_CUBIC_METRE, AIR_STEP),
                new Result(SaltInputs.SHARE_OF_LIMIT, "As a share of the limit", ONE, AIR_STEP));
    }

    @Override
    public String inputAt(String what) {
        return SPELLS;
    }

    @Override
    public void work(Given given, Work work) {
        Optional<Fluorosilicate> salt = salt(given);
        Density plain = average(given, work, salt.isPresent() ? PLAIN_AVERAGE : AVERAGE);
        Density average = salt.map(known -> SaltInputs.asFluoride(
                        AVERAGE, plain, SaltInputs.fluorideShare(SaltInputs.molarMass(known, work), work), work))
                .orElse(plain);
        Ratio ofLimit = SaltInputs.shareOfLimit(average, work);
        work.result(AVERAGE, average);
        work.result(SaltInputs.SHARE_OF_LIMIT, ofLimit);
        work.finding(
                AGAINST_LIMIT,
                ofLimit.asNumber() > 1
                        ? "Above the limit, on paper already: never work like that."
                        : "Below the limit on paper, which clears nobody.");
        slips(given, work, salt.map(Fluorosilicate::fluorideFraction).orElse(1.0));
        SaltInputs.limitNote(work);
        work.note("The divisor is 8 hours, whatever the spells add up to: the rest of the day counts as clean air.");
    }

    @Override
    public List<String> cautions() {
        return List.of(GelInputs.CAUTION, SaltInputs.ESTIMATE_ONLY);
    }

    private static Optional<Fluorosilicate> salt(Given given) {
        return switch (given.choice(MEASURED_AS)) {
            case SaltInputs.SODIUM -> Optional.of(Fluorosilicate.SODIUM);
            case SaltInputs.POTASSIUM -> Optional.of(Fluorosilicate.POTASSIUM);
            default -> Optional.empty();
        };
    }

    /** As it was measured; the core's average does not care what is averaged. */
    private static Density average(Given given, Work work, String id) {
        List<Given.Row> rows = given.rows(SPELLS);
        List<Work.In> numbers = new ArrayList<>();
        rows.forEach(row -> {
            numbers.add(SaltInputs.in(row.get(0, Density.class)));
            numbers.add(Work.In.of(row.get(1, TimeSpan.class), HOUR));
        });
        numbers.add(Work.In.of(REFERENCE, HOUR));
        return work.step(
                id,
                "Average over 8 hours",
                "E = sum of (in the air × time) ÷ 8 h",
                rows.stream().map(row -> "{} × {}").collect(Collectors.joining(" + ", "(", ") ÷ {}")),
                SaltInputs.density(shift(given).average()),
                MILLIGRAM_PER_CUBIC_METRE,
                numbers.toArray(Work.In[]::new));
    }

    private static Shift shift(Given given) {
        return new Shift(given.rows(SPELLS).stream()
                .map(row -> new Shift.Spell(
                        FluorideInAir.ofMilligramsPerCubicMetre(SaltInputs.milligrams(row.get(0, Density.class))),
                        row.get(1, TimeSpan.class)))
                .toList());
    }

    private static void slips(Given given, Work work, double share) {
        double plain = shift(given).average().inMilligramsPerCubicMetre();
        List<Given.Row> rows = given.rows(SPELLS);
        double hours = rows.stream()
                .mapToDouble(row -> row.get(1, TimeSpan.class).inHours())
                .sum();
        double mean = rows.stream()
                .mapToDouble(row -> SaltInputs.milligrams(row.get(0, Density.class)))
                .average()
                .orElse(0);
        slip(work, Slip.SALT_FOR_FLUORIDE, plain);
        slip(work, Slip.TOTAL_FOR_EIGHT, plain * share * REFERENCE.inHours() / hours);
        slip(work, Slip.TIMES_LEFT_OUT, mean * share);
    }

    private static void slip(Work work, Slip slip, double milligrams) {
        work.slip(slip, AVERAGE, () -> SaltInputs.inAir(milligrams));
        work.slip(
                slip, SaltInputs.SHARE_OF_LIMIT, () -> Ratio.of(milligrams / Shift.LIMIT.inMilligramsPerCubicMetre()));
    }
}

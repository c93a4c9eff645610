package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.drying.DryingCurve;
import org.riseandgel.core.drying.DryingOutcome;
import org.riseandgel.core.drying.PieceWeighing;
import org.riseandgel.core.drying.WeighBack;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.Interval;

/** How long a piece still has to dry, from weighing it again and again. */
public final class WeighPiece implements Calculation {
    static final String WEIGHINGS = "weighings";
    static final String WATER_LEFT = "waterLeft";
    static final String READABILITY = "readability";
    static final String CHANCE = "chance";
    static final String DRY_MASS = "dryMass";
    static final String TIME_LEFT = "timeLeft";
    static final String EARLIEST = "earliest";
    static final String LATEST = "latest";

    private static final double CLOCK = 0.1;

    @Override
    public String id() {
        return "weigh-back";
    }

    @Override
    public String title() {
        return "Weighing back";
    }

    @Override
    public String purpose() {
        return "How long a piece still has to dry, from what it weighed so far.";
    }

    @Override
    public Task task() {
        return Task.DRYING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Readings(
                        WEIGHINGS,
                        "Weighings of the piece",
                        "A weighing to a line: time since the oven was closed; mass, as in 2 h; 300 g. Three or more.",
                        List.of(new Input.Column("time", HOUR, 0, 240), new Input.Column("mass", GRAM, 0.1, 50_000)),
                        List.of(
                                List.of(0.0, 412.0),
                                List.of(1.0, 349.0),
                                List.of(2.0, 309.0),
                                List.of(3.0, 283.0),
                                List.of(4.0, 267.0))),
                new Input.Measured(
                        WATER_LEFT,
                        "Water that may be left",
                        "As a share of the water at the first weighing: 5 % left is 95 % dry.",
                        PERCENT,
                        0.1,
                        50,
                        5.0),
                new Input.Measured(
                        READABILITY, "Balance reads to", "The smallest step of its display.", GRAM, 0.001, 100, 1.0),
                new Input.Measured(
                        CHANCE,
                        "Chance that it falls between the least and the most",
                        "90 % is usual for planning.",
                        PERCENT,
                        50,
                        99,
                        90.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(TIME_LEFT, "Still to dry, after the last weighing", HOUR, CLOCK),
                new Result(EARLIEST, "At the least", HOUR, CLOCK),
                new Result(LATEST, "At the most", HOUR, CLOCK),
                new Result(DRY_MASS, "Mass when dry", GRAM, 1));
    }

    @Override
    public String inputAt(String what) {
        return what.startsWith("readability") ? READABILITY : WEIGHINGS;
    }

    @Override
    public void work(Given given, Work work) {
        DryingOutcome outcome = outcome(given);
        if (outcome instanceof DryingCurve curve) {
            new DryingWork(given, work, curve).write();
        } else {
            work.note("Cannot tell yet. " + ((DryingOutcome.CannotTell) outcome).words());
        }
    }

    @Override
    public Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        return outcome(given) instanceof DryingCurve curve
                ? Optional.of(drawing(given, outcome, curve, text))
                : Optional.empty();
    }

    static DryingOutcome outcome(Given given) {
        return WeighBack.of(
                given.rows(WEIGHINGS).stream()
                        .map(row -> new PieceWeighing(row.get(0, TimeSpan.class), row.get(1, Mass.class)))
                        .toList(),
                given.get(READABILITY, Mass.class));
    }

    static double chance(Given given) {
        return given.get(CHANCE, Concentration.class).asFraction();
    }

    static double lastHours(Given given) {
        return given.rows(WEIGHINGS).stream()
                .mapToDouble(row -> row.get(0, TimeSpan.class).inHours())
                .max()
                .orElseThrow();
    }

    private static String drawing(Given given, Outcome outcome, DryingCurve curve, QuantityText text) {
        double first = given.rows(WEIGHINGS).stream()
                .mapToDouble(row -> row.get(0, TimeSpan.class).inHours())
                .min()
                .orElseThrow();
        double heaviest = given.rows(WEIGHINGS).stream()
                .mapToDouble(row -> row.get(1, Mass.class).inGrams())
                .max()
                .orElseThrow();
        double done = lastHours(given) + ((TimeSpan) outcome.told(TIME_LEFT)).inHours();
        Interval dry = curve.dryGrams(chance(given)).interval();
        double span = heaviest - dry.low();
        String mass = text.toReadability(outcome.told(DRY_MASS), GRAM, 1);
        CurveChart chart = new CurveChart(
                "drying",
                "Drying",
                "The piece tends to %s and has still to dry for %s."
                        .formatted(mass, text.toReadability(outcome.told(TIME_LEFT), HOUR, CLOCK)),
                new CurveChart.Axis("hours since the oven was closed", first, first + 1.15 * (done - first)),
                new CurveChart.Axis("mass in g", Math.max(0, dry.low() - 0.1 * span), heaviest + 0.05 * span));
        chart.band(first, hours -> dry)
                .curve(first, hours -> curve.massAt(TimeSpan.ofHours(hours)).inGrams())
                .level(curve.dryGrams(chance(given)).value(), "dry: " + mass);
        given.rows(WEIGHINGS)
                .forEach(row -> chart.reading(
                        row.get(0, TimeSpan.class).inHours(),
                        row.get(1, Mass.class).inGrams()));
        return chart.mark(
                        done,
                        curve.massAt(TimeSpan.ofHours(done)).inGrams(),
                        text.toReadability(TimeSpan.ofHours(done), HOUR, CLOCK))
                .svg(text);
    }
}

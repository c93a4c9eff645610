package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.rise.RiseCurve;
import org.riseandgel.core.rise.RiseFit;
import org.riseandgel.core.rise.RiseForecast;
import org.riseandgel.core.rise.RiseOutcome;
import org.riseandgel.core.rise.RiseReading;

/** When a foam will have risen as far as wanted, from the readings of the stick so far. */
public final class ForecastRise implements Calculation {
    static final String READINGS = "readings";
    static final String WANTED = "wanted";
    static final String CHANCE = "chance";
    static final String TIME = "time";
    static final String EARLIEST = "earliest";
    static final String LATEST = "latest";
    static final String HIGHEST = "highest";

    private static final double CLOCK = 0.1;

    @Override
    public String id() {
        return "rise-forecast";
    }

    @Override
    public String title() {
        return "Rise";
    }

    @Override
    public String purpose() {
        return "When the foam will have risen as far as you want, from what you read on the stick so far.";
    }

    @Override
    public Task task() {
        return Task.WHIPPING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Readings(
                        READINGS,
                        "Readings of the stick",
                        "A reading to a line: whipping time so far; expansion ratio, as in 2 min; 1.8. Three or more.",
                        List.of(new Input.Column("time", MINUTE, 0, 240), new Input.Column("ratio", ONE, 0.5, 100)),
                        List.of(
                                List.of(1.0, 2.1),
                                List.of(2.0, 3.0),
                                List.of(3.0, 3.6),
                                List.of(4.0, 4.2),
                                List.of(6.0, 4.8))),
                new Input.Measured(
                        WANTED,
                        "Wanted expansion ratio",
                        "How many times the liquid's volume the foam shall have. 4 is only a start; your formula decides.",
                        ONE,
                        1.01,
                        20,
                        4.0),
                new Input.Measured(
                        CHANCE,
                        "Chance that it falls between earliest and latest",
                        "90 % is usual for planning.",
                        PERCENT,
                        50,
                        99,
                        90.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(TIME, "Whipping time to the wanted ratio", MINUTE, CLOCK),
                new Result(EARLIEST, "Earliest", MINUTE, CLOCK),
                new Result(LATEST, "Latest", MINUTE, CLOCK),
                new Result(HIGHEST, "Ratio that the foam tends to", ONE, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("wanted ratio") ? WANTED : READINGS;
    }

    @Override
    public void work(Given given, Work work) {
        RiseOutcome outcome = outcome(given);
        if (outcome instanceof RiseCurve curve) {
            new RiseWork(given, work, curve).write();
        } else {
            work.note("Cannot tell yet. " + ((RiseOutcome.CannotTell) outcome).words());
        }
    }

    @Override
    public Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        return outcome(given) instanceof RiseCurve curve ? Optional.of(drawing(given, curve, text)) : Optional.empty();
    }

    static RiseOutcome outcome(Given given) {
        return RiseFit.of(given.rows(READINGS).stream()
                .map(row -> new RiseReading(row.get(0, TimeSpan.class), row.get(1, Ratio.class)))
                .toList());
    }

    static double chance(Given given) {
        return given.get(CHANCE, Concentration.class).asFraction();
    }

    private static String drawing(Given given, RiseCurve curve, QuantityText text) {
        double chance = chance(given);
        double highest = curve.highest(chance).value();
        Ratio wanted = given.get(WANTED, Ratio.class);
        Optional<RiseForecast.Reached> reached = Optional.of(curve.timeTo(wanted, chance))
                .filter(RiseForecast.Reached.class::isInstance)
                .map(RiseForecast.Reached.class::cast);
        double end = 1.15
                * Math.max(
                        lastReading(given),
                        reached.map(found -> found.middle().inMinutes()).orElse(0.0));
        String when = reached.map(found -> text.toReadability(found.middle(), MINUTE, CLOCK))
                .orElse("never");
        CurveChart chart = new CurveChart(
                "rise",
                "Rise with whipping",
                "The curve tends to %s and is at %s after: %s."
                        .formatted(text.toReadability(Ratio.of(highest), ONE, 0.1), text.of(wanted, ONE), when),
                new CurveChart.Axis("minutes of whipping", 0, end),
                new CurveChart.Axis("expansion ratio", 1, 1.1 * Math.max(highest, wanted.asNumber())));
        chart.band(0, minutes -> curve.readingAt(TimeSpan.ofMinutes(minutes), chance)
                        .interval())
                .curve(0, minutes -> curve.ratioAt(TimeSpan.ofMinutes(minutes)).asNumber())
                .level(wanted.asNumber(), "wanted");
        given.rows(READINGS)
                .forEach(row -> chart.reading(
                        row.get(0, TimeSpan.class).inMinutes(),
                        row.get(1, Ratio.class).asNumber()));
        reached.ifPresent(found -> chart.mark(found.middle().inMinutes(), wanted.asNumber(), when));
        return chart.svg(text);
    }

    private static double lastReading(Given given) {
        return given.rows(READINGS).stream()
                .mapToDouble(row -> row.get(0, TimeSpan.class).inMinutes())
                .max()
                .orElseThrow();
    }
}

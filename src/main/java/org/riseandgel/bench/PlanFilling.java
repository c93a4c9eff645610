package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.SECOND;

import java.util.List;
import java.util.stream.Stream;
import org.riseandgel.core.mold.FillPlan;
import org.riseandgel.core.mold.FoamNeeded;
import org.riseandgel.core.mold.Scoops;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

/** How many scoops fill a mold, and how long each may take before the foam gels. */
public final class PlanFilling implements Calculation {
    static final String SCOOP = "scoop";
    static final String GEL = "earliestGel";
    static final String START = "fillStart";
    static final String CLOSING = "closing";
    static final String RESERVE = "reserve";
    static final String FOAM = "foam";
    static final String SCOOPS_EXACT = "scoopsExact";
    static final String SCOOPS = "scoops";
    static final String EACH = "scoopVolume";
    static final String FILLING = "fillTime";
    static final String PACE = "timePerScoop";

    @Override
    public String id() {
        return "fill-plan";
    }

    @Override
    public String title() {
        return "Filling";
    }

    @Override
    public String purpose() {
        return "How many scoops fill the mold, and how long each may take before the foam gels.";
    }

    @Override
    public Task task() {
        return Task.GELLING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                BatchInputs.cavity(750),
                BatchInputs.overfill(),
                new Input.Measured(SCOOP, "Your scoop", "What it holds, struck off level.", MILLILITRE, 1, 5_000, 60.0),
                minutes(
                        GEL,
                        "Earliest gel",
                        "After the gelling agent was added. 10 to 15 min is common practice, no source: take the early"
                                + " end, or that of your forecast.",
                        600,
                        10.0),
                minutes(START, "Filling starts", "So long after the gelling agent was added.", 300, 4.0),
                minutes(CLOSING, "Closing takes", "From the last scoop to the mold pressed shut.", 300, 1.0),
                minutes(
                        RESERVE,
                        "Time kept in hand",
                        "What is left over if all goes well. 2 min is common practice, no source.",
                        300,
                        2.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(FOAM, "Foam to carry into the mold", MILLILITRE, 1),
                new Result(SCOOPS, "Scoops", ONE, 1),
                new Result(EACH, "Foam in each scoop", MILLILITRE, 1),
                new Result(FILLING, "Time for filling", MINUTE, 0.1),
                new Result(PACE, "Time for each scoop", SECOND, 1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("time for filling") ? START : SCOOP;
    }

    @Override
    public void work(Given given, Work work) {
        Volume foam = foam(given, work);
        Ratio scoops = scoops(given, foam, work);
        TimeSpan filling = filling(given, work);
        TimeSpan pace = work.step(
                PACE,
                "Time for each scoop",
                "time for filling ÷ scoops",
                "{} ÷ {}",
                TimeSpan.ofSeconds(filling.inSeconds() / scoops.asNumber()),
                SECOND,
                Work.In.of(filling, SECOND),
                Work.In.of(scoops, ONE));
        work.result(PACE, pace);
        slips(given, work);
        work.table(quarters(given));
        work.note("Deep and fine parts come first, while the foam is still wet (common practice, no source).");
        work.note("A gel time is a forecast. Keep a test pile beside you: when its shine goes, close at once.");
    }

    private static Volume foam(Given given, Work work) {
        Volume cavity = given.get(BatchInputs.CAVITY, Volume.class);
        Concentration overfill = given.get(BatchInputs.OVERFILL, Concentration.class);
        Volume foam = work.step(
                FOAM,
                "Foam to carry into the mold",
                "foam = cavity × (100 % + overfill)",
                "{} × (100 % + {})",
                intoMold(given),
                MILLILITRE,
                Work.In.of(cavity, MILLILITRE),
                Work.In.of(overfill, PERCENT));
        work.result(FOAM, foam);
        return foam;
    }

    private static Ratio scoops(Given given, Volume foam, Work work) {
        Volume scoop = given.get(SCOOP, Volume.class);
        Scoops carried = new Scoops(foam, scoop);
        Ratio exact = work.step(
                SCOOPS_EXACT,
                "Scoops, before rounding up",
                "foam ÷ scoop",
                "{} ÷ {}",
                Ratio.of(carried.exact()),
                ONE,
                Work.In.of(foam, MILLILITRE),
                Work.In.of(scoop, MILLILITRE));
        Ratio scoops = work.step(
                SCOOPS,
                "Scoops",
                "rounded up: part of a scoop is a scoop",
                "{}",
                Ratio.of(Scoops.roundedUp(exact.asNumber())),
                ONE,
                Work.In.of(exact, ONE));
        work.result(SCOOPS, scoops);
        work.result(
                EACH,
                work.step(
                        EACH,
                        "Foam in each scoop",
                        "foam ÷ scoops",
                        "{} ÷ {}",
                        Volume.ofMillilitres(foam.inMillilitres() / scoops.asNumber()),
                        MILLILITRE,
                        Work.In.of(foam, MILLILITRE),
                        Work.In.of(scoops, ONE)));
        return scoops;
    }

    private static TimeSpan filling(Given given, Work work) {
        TimeSpan filling = work.step(
                FILLING,
                "Time for filling",
                "earliest gel − start − closing − time in hand",
                "{} − {} − {} − {}",
                timeForFilling(given),
                MINUTE,
                Stream.of(GEL, START, CLOSING, RESERVE)
                        .map(name -> Work.In.of(given.get(name, TimeSpan.class), MINUTE))
                        .toArray(Work.In[]::new));
        work.result(FILLING, filling);
        return filling;
    }

    private static Volume intoMold(Given given) {
        return intoMold(given, given.get(BatchInputs.OVERFILL, Concentration.class));
    }

    private static Volume intoMold(Given given, Concentration overfill) {
        return new FoamNeeded(given.get(BatchInputs.CAVITY, Volume.class), overfill, 1, Concentration.ofPercent(0))
                .intoMolds();
    }

    private static TimeSpan timeForFilling(Given given) {
        double left = minutes(given, GEL) - minutes(given, START) - minutes(given, CLOSING) - minutes(given, RESERVE);
        if (!(left > 0)) {
            throw OutOfRangeException.because(
                    "time for filling",
                    "no time is left for filling: start, closing and time in hand must come to less than the %s min to"
                                    .formatted(minutes(given, GEL))
                            + " the earliest gel. Do not start");
        }
        return TimeSpan.ofMinutes(left);
    }

    private static double minutes(Given given, String name) {
        return given.get(name, TimeSpan.class).inMinutes();
    }

    private static void slips(Given given, Work work) {
        Volume bare = intoMold(given, Concentration.ofPercent(0));
        Scoops right = new Scoops(intoMold(given), given.get(SCOOP, Volume.class));
        Scoops fewer = new Scoops(bare, right.largest());
        TimeSpan filling = timeForFilling(given);
        work.slip(Slip.OVERFILL_LEFT_OUT, FOAM, () -> bare);
        work.slip(Slip.OVERFILL_LEFT_OUT, SCOOPS, () -> Ratio.of(fewer.count()));
        work.slip(Slip.OVERFILL_LEFT_OUT, PACE, () -> fewer.pace(filling));
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                SCOOPS,
                () -> Ratio.of(right.foam().inMillilitres() * right.largest().inMillilitres()));
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, PACE, () -> TimeSpan.ofSeconds(filling.inSeconds() * right.count()));
        TimeSpan toTheEnd = TimeSpan.ofMinutes(filling.inMinutes() + minutes(given, RESERVE));
        work.slip(Slip.RESERVE_LEFT_OUT, FILLING, () -> toTheEnd);
        work.slip(Slip.RESERVE_LEFT_OUT, PACE, () -> right.pace(toTheEnd));
        TimeSpan closingToo = TimeSpan.ofMinutes(filling.inMinutes() + minutes(given, CLOSING));
        work.slip(Slip.CLOSING_LEFT_OUT, FILLING, () -> closingToo);
        work.slip(Slip.CLOSING_LEFT_OUT, PACE, () -> right.pace(closingToo));
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                PACE,
                () -> TimeSpan.ofSeconds(right.count() / filling.inSeconds()),
                "Time for each scoop is time over scoops, not scoops over time.");
    }

    private static Outcome.Table quarters(Given given) {
        Volume quarter =
                Volume.ofMillilitres(given.get(BatchInputs.CAVITY, Volume.class).inMillilitres() / 4);
        FillPlan plan = FillPlan.of(
                Stream.of("First quarter", "Second quarter", "Third quarter", "Last quarter")
                        .map(name -> new FillPlan.Part(name, quarter))
                        .toList(),
                given.get(BatchInputs.OVERFILL, Concentration.class),
                given.get(START, TimeSpan.class),
                timeForFilling(given));
        return new Outcome.Table(
                "What must be in by when, counted from adding the gelling agent",
                List.of("Portion", "Foam", "From", "To"),
                plan.portions().stream()
                        .map(portion -> List.of(
                                Outcome.Cell.of(portion.name()),
                                Outcome.Cell.of(portion.foam(), MILLILITRE, 1),
                                Outcome.Cell.of(portion.start(), MINUTE, 0.1),
                                Outcome.Cell.of(portion.end(), MINUTE, 0.1)))
                        .toList());
    }

    private static Input.Measured minutes(String name, String label, String help, double most, double byDefault) {
        return new Input.Measured(name, label, help, MINUTE, 0, most, byDefault);
    }
}

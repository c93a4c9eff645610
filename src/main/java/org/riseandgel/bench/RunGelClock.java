package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MINUTE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.riseandgel.core.gel.GelClock;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.gel.WorkPlan;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** Whether the work between adding the agent and closing the mold fits before the gel. */
public final class RunGelClock implements Calculation {
    static final String ADVICE = "advice";
    static final String LATEST_CLOSE = "latestClose";
    static final String CLOSED = "closed";
    static final String SLACK = "slack";
    static final List<Step> STEPS = List.of(
            new Step("disperse", "Disperse", "stirring the agent in", 0, 1),
            new Step("refine", "Refine", "breaking the large bubbles", 1, 2),
            new Step("fill", "Fill", "filling both halves", 3, 3),
            new Step("close", "Close", "joining and pressing the halves", 6, 1.5));

    private static final double CLOCK = 0.1;
    private static final double LONGEST = 240;

    /** A step of the work with its usual times in minutes. */
    record Step(String name, String title, String what, double start, double duration) {
        String startName() {
            return name + "Start";
        }

        String timeName() {
            return name + "Time";
        }
    }

    @Override
    public String id() {
        return "gel-clock";
    }

    @Override
    public String title() {
        return "Gel clock";
    }

    @Override
    public String purpose() {
        return "Whether you will have closed the mold before the foam can gel.";
    }

    @Override
    public Task task() {
        return Task.GELLING;
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(List.of(GelInputs.dose(), GelInputs.temperature()));
        STEPS.forEach(step -> {
            inputs.add(new Input.Measured(
                    step.startName(),
                    step.title() + ": starts",
                    "Minutes after the gelling agent is added: " + step.what() + ".",
                    MINUTE,
                    0,
                    LONGEST,
                    step.start()));
            inputs.add(new Input.Measured(
                    step.timeName(),
                    step.title() + ": takes",
                    "From your own last batches, not the fastest of them.",
                    MINUTE,
                    0,
                    LONGEST,
                    step.duration()));
        });
        inputs.add(GelInputs.chance());
        inputs.add(GelInputs.records());
        return inputs;
    }

    @Override
    public List<Finding> findings() {
        return List.of(new Finding(ADVICE, "Advice"));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(LATEST_CLOSE, "Latest moment to have the mold closed", MINUTE, CLOCK),
                new Result(CLOSED, "You will have closed it after", MINUTE, CLOCK),
                new Result(SLACK, "Time to spare", MINUTE, CLOCK));
    }

    @Override
    public String inputAt(String what) {
        return STEPS.stream()
                .filter(step -> step.name().equals(what))
                .findFirst()
                .map(Step::startName)
                .orElse("closeTime");
    }

    @Override
    public void work(Given given, Work work) {
        WorkPlan plan = plan(given);
        GelWork gel = new GelWork(given, work);
        TimeSpan median = gel.median();
        Ratio spread = gel.spread();
        TimeSpan latest = gel.early(LATEST_CLOSE, "Early end of the gel: latest moment to be closed", median, spread);
        TimeSpan closed = work.step(
                CLOSED,
                "The mold is closed",
                "start of closing + its duration",
                "{} + {}",
                plan.closed(),
                MINUTE,
                Work.In.of(plan.close().start(), MINUTE),
                Work.In.of(plan.close().duration(), MINUTE));
        work.result(LATEST_CLOSE, latest);
        work.result(CLOSED, closed);
        difference(work, latest, closed);
        slips(work, gel, plan, latest, median, spread);
        advise(work, plan, gel.forecast());
        gel.remarks();
    }

    @Override
    public Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        return Optional.of(new GelTimeLine(plan(given), GelInputs.forecast(given), text).svg());
    }

    @Override
    public List<String> cautions() {
        return List.of(GelInputs.CAUTION);
    }

    private static WorkPlan plan(Given given) {
        List<WorkPlan.Step> steps = STEPS.stream()
                .map(step -> new WorkPlan.Step(
                        given.get(step.startName(), TimeSpan.class), given.get(step.timeName(), TimeSpan.class)))
                .toList();
        return new WorkPlan(steps.get(0), steps.get(1), steps.get(2), steps.get(3));
    }

    /** Time to spare is no result when there is none: a span of time has no sign. */
    private static void difference(Work work, TimeSpan latest, TimeSpan closed) {
        double slack = latest.inSeconds() - closed.inSeconds();
        if (slack >= 0) {
            work.result(SLACK, step(work, SLACK, "Time to spare", "latest − closed", slack, latest, closed));
        } else {
            TimeSpan late = step(work, "tooLate", "Closed too late by", "closed − latest", -slack, closed, latest);
            work.note("The mold would be closed {} too late: the foam may gel in the open mold.", in(late));
        }
    }

    private static TimeSpan step(
            Work work, String id, String label, String formula, double seconds, TimeSpan from, TimeSpan take) {
        return work.step(id, label, formula, "{} − {}", TimeSpan.ofSeconds(seconds), MINUTE, in(from), in(take));
    }

    private static void advise(Work work, WorkPlan plan, GelForecast forecast) {
        GelClock clock = GelClock.of(plan, forecast, GelClock.USUAL_COMFORT);
        work.finding(ADVICE, words(clock.advice()));
        work.table(table(plan, clock));
        work.note("Tight is less than {} to spare (common practice, no source).", in(GelClock.USUAL_COMFORT));
    }

    private static String words(GelClock.Advice advice) {
        return switch (advice) {
            case GO -> "GO: the mold is closed in good time.";
            case TIGHT -> "TIGHT: it fits, but nothing may go wrong. Cut a step, or cool the foam.";
            case DO_NOT_START -> "DO NOT START: the foam may gel before the mold is closed.";
        };
    }

    private static Outcome.Table table(WorkPlan plan, GelClock clock) {
        List<WorkPlan.Step> steps = List.of(plan.disperse(), plan.refine(), plan.fill(), plan.close());
        return new Outcome.Table(
                "The work, in minutes after the agent is added",
                List.of("Step", "Starts", "Ends", "Latest start"),
                IntStream.range(0, steps.size())
                        .mapToObj(i -> List.of(
                                Outcome.Cell.of(STEPS.get(i).title()),
                                cell(steps.get(i).start()),
                                cell(steps.get(i).end()),
                                cell(clock.latestStart(steps.get(i)))))
                        .toList());
    }

    /** A slip that gives time to spare is one only where there is some to be told. */
    private static void slips(Work work, GelWork gel, WorkPlan plan, TimeSpan latest, TimeSpan median, Ratio spread) {
        double start = plan.close().start().inSeconds();
        double added = plan.disperse().duration().inSeconds()
                + plan.refine().duration().inSeconds()
                + plan.fill().duration().inSeconds()
                + plan.close().duration().inSeconds();
        gel.slips(LATEST_CLOSE, wrong -> early(wrong, spread));
        work.slip(Slip.MIDDLE_FOR_EARLY, LATEST_CLOSE, () -> median);
        work.slip(Slip.START_FOR_END, CLOSED, () -> TimeSpan.ofSeconds(start));
        work.slip(Slip.DURATIONS_ADDED, CLOSED, () -> TimeSpan.ofSeconds(added));
        double filled = plan.fill().end().inSeconds();
        if (start < filled) {
            double waited = filled + plan.close().duration().inSeconds();
            work.slip(Slip.OVERLAP_OVERLOOKED, CLOSED, () -> TimeSpan.ofSeconds(waited));
        }
        double closed = plan.closed().inSeconds();
        if (latest.inSeconds() >= closed) {
            gel.slips(SLACK, wrong -> less(early(wrong, spread), closed));
            work.slip(Slip.MIDDLE_FOR_EARLY, SLACK, () -> less(median, closed));
            work.slip(Slip.START_FOR_END, SLACK, () -> less(latest, start));
            work.slip(Slip.DURATIONS_ADDED, SLACK, () -> less(latest, added));
        }
    }

    private static TimeSpan early(TimeSpan median, Ratio spread) {
        return TimeSpan.ofSeconds(median.inSeconds() / spread.asNumber());
    }

    private static TimeSpan less(TimeSpan time, double seconds) {
        return TimeSpan.ofSeconds(time.inSeconds() - seconds);
    }

    private static Outcome.Cell cell(TimeSpan time) {
        return Outcome.Cell.of(time, MINUTE, CLOCK);
    }

    private static Work.In in(Quantity time) {
        return Work.In.of(time, MINUTE);
    }
}

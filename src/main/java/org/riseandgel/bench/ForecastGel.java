package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MINUTE;

import java.util.List;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** When a batch will gel, from the dose and the temperature, and from own records where there are some. */
public final class ForecastGel implements Calculation {
    static final String LOW = "low";
    static final String MEDIAN = GelWork.MEDIAN;
    static final String HIGH = "high";

    private static final double CLOCK = 0.1;

    @Override
    public String id() {
        return "gel-forecast";
    }

    @Override
    public String title() {
        return "Gel time";
    }

    @Override
    public String purpose() {
        return "When the foam will gel after the gelling agent is added: an early and a late end, never one number alone.";
    }

    @Override
    public Task task() {
        return Task.GELLING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(GelInputs.dose(), GelInputs.temperature(), GelInputs.chance(), GelInputs.records());
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(LOW, "Early end: be closed by then", MINUTE, CLOCK),
                new Result(MEDIAN, "Middle", MINUTE, CLOCK),
                new Result(HIGH, "Late end", MINUTE, CLOCK));
    }

    @Override
    public void work(Given given, Work work) {
        GelWork gel = new GelWork(given, work);
        TimeSpan median = gel.median();
        Ratio spread = gel.spread();
        work.result(LOW, gel.early(LOW, "Early end", median, spread));
        work.result(MEDIAN, median);
        work.result(HIGH, gel.late(HIGH, "Late end", median, spread));
        gel.slips(MEDIAN, wrong -> wrong);
        gel.slips(LOW, wrong -> TimeSpan.ofSeconds(wrong.inSeconds() / spread.asNumber()));
        gel.slips(HIGH, wrong -> TimeSpan.ofSeconds(wrong.inSeconds() * spread.asNumber()));
        work.slip(Slip.MIDDLE_FOR_EARLY, LOW, () -> median);
        gel.remarks();
        work.note("Make a test pile of the same foam and watch it: the foam itself decides.");
    }

    @Override
    public List<String> cautions() {
        return List.of(GelInputs.CAUTION);
    }
}

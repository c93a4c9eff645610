package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import org.riseandgel.core.drying.ThicknessTime;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** From one bake that is known to the time for another thickness, and to the thickness for another time. */
public final class CompareThickness implements Calculation {
    static final String TIME = "time";
    static final String TIME_FOR_THICKNESS = "timeForThickness";
    static final String TIMES_AS_LONG = "timesAsLong";
    static final String THICKNESS_FOR_TIME = "thicknessForTime";

    @Override
    public String id() {
        return "thickness-time";
    }

    @Override
    public String title() {
        return "Thickness and time";
    }

    @Override
    public String purpose() {
        return "How long another thickness takes to dry, and how thick a piece dries in the time you have.";
    }

    @Override
    public Task task() {
        return Task.DRYING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                ThicknessWork.knownThickness(),
                ThicknessWork.knownTime(),
                ThicknessWork.thickness(5),
                new Input.Measured(
                        TIME, "Time you have", "For the thickness that dries in it.", HOUR, 0.1, 1_000, 10.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(TIME_FOR_THICKNESS, "Time for your thickness", HOUR, 0.1),
                new Result(THICKNESS_FOR_TIME, "Thickness for your time", CENTIMETRE, 0.1));
    }

    @Override
    public void work(Given given, Work work) {
        work.result(TIME_FOR_THICKNESS, ThicknessWork.time(TIME_FOR_THICKNESS, "Time for your thickness", given, work));
        TimeSpan time = given.get(TIME, TimeSpan.class);
        TimeSpan known = given.get(ThicknessWork.KNOWN_TIME, TimeSpan.class);
        Length thickness = given.get(ThicknessWork.KNOWN_THICKNESS, Length.class);
        Ratio times = work.step(
                TIMES_AS_LONG,
                "How many times as long",
                "t ÷ t₁",
                "{} ÷ {}",
                Ratio.of(time.inSeconds() / known.inSeconds()),
                ONE,
                Work.In.of(time, HOUR),
                Work.In.of(known, HOUR));
        work.result(
                THICKNESS_FOR_TIME,
                work.step(
                        THICKNESS_FOR_TIME,
                        "Thickness for your time",
                        "L = L₁ × √(t ÷ t₁)",
                        "{} × √{}",
                        ThicknessTime.thicknessFor(times, thickness),
                        CENTIMETRE,
                        Work.In.of(thickness, CENTIMETRE),
                        Work.In.of(times, ONE)));
        ThicknessWork.timeSlips(TIME_FOR_THICKNESS, given, work);
        thicknessSlips(thickness, time.inSeconds() / known.inSeconds(), work);
        work.note("Holds for the same foam at the same temperature. The time to warm the mold is left out.");
        work.note("A rule for planning. Only weighing back tells that a piece is dry.");
    }

    private static void thicknessSlips(Length known, double timesAsLong, Work work) {
        work.slip(
                Slip.SQUARE_LEFT_OUT,
                THICKNESS_FOR_TIME,
                () -> Length.ofMillimetres(known.inMillimetres() * timesAsLong),
                "Four times as long dries twice the thickness, not four times.");
        work.slip(
                Slip.DOUBLED_FOR_SQUARED,
                THICKNESS_FOR_TIME,
                () -> Length.ofMillimetres(known.inMillimetres() * timesAsLong / 2),
                "A square root is not a half: it is the number that gives the other when taken times itself.");
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                THICKNESS_FOR_TIME,
                () -> ThicknessTime.thicknessFor(Ratio.of(1 / timesAsLong), known),
                "It is the new time over the known one: more time dries a thicker piece.");
    }
}

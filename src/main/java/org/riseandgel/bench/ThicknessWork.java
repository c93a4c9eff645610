package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.ONE;

import org.riseandgel.core.drying.ThicknessTime;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** From a bake that is known to the time for another thickness: t = t₁ × (L ÷ L₁)². */
final class ThicknessWork {
    static final String THICKNESS = "thickness";
    static final String KNOWN_THICKNESS = "knownThickness";
    static final String KNOWN_TIME = "knownTime";
    static final String TIMES_AS_THICK = "timesAsThick";

    private ThicknessWork() {}

    static Input.Measured thickness(double byDefault) {
        return new Input.Measured(
                THICKNESS, "Thickest part", "Measure the sculpt at its thickest.", CENTIMETRE, 0.05, 50, byDefault);
    }

    static Input.Measured knownThickness() {
        return new Input.Measured(
                KNOWN_THICKNESS,
                "Known thickness",
                "The thickest part of a piece that you have baked dry. 3 cm is only an example.",
                CENTIMETRE,
                0.05,
                50,
                3.0);
    }

    static Input.Measured knownTime() {
        return new Input.Measured(
                KNOWN_TIME,
                "Known time",
                "How long that piece took. 4 h is the shortest bake of common practice, no source.",
                HOUR,
                0.1,
                200,
                4.0);
    }

    static TimeSpan time(String id, String label, Given given, Work work) {
        Length thickness = given.get(THICKNESS, Length.class);
        Length known = given.get(KNOWN_THICKNESS, Length.class);
        TimeSpan time = given.get(KNOWN_TIME, TimeSpan.class);
        Ratio times = work.step(
                TIMES_AS_THICK,
                "How many times as thick",
                "L ÷ L₁",
                "{} ÷ {}",
                Ratio.of(thickness.inMillimetres() / known.inMillimetres()),
                ONE,
                Work.In.of(thickness, CENTIMETRE),
                Work.In.of(known, CENTIMETRE));
        return work.step(
                id,
                label,
                "t = t₁ × (L ÷ L₁)²",
                "{} × {}²",
                ThicknessTime.scaled(time, times),
                HOUR,
                Work.In.of(time, HOUR),
                Work.In.of(times, ONE));
    }

    static void timeSlips(String result, Given given, Work work) {
        TimeSpan known = given.get(KNOWN_TIME, TimeSpan.class);
        double times = given.get(THICKNESS, Length.class).inMillimetres()
                / given.get(KNOWN_THICKNESS, Length.class).inMillimetres();
        work.slip(Slip.SQUARE_LEFT_OUT, result, () -> TimeSpan.ofSeconds(known.inSeconds() * times));
        work.slip(Slip.DOUBLED_FOR_SQUARED, result, () -> TimeSpan.ofSeconds(known.inSeconds() * times * 2));
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                result,
                () -> ThicknessTime.scaled(known, Ratio.of(1 / times)),
                "It is the new thickness over the known one: a thicker piece takes longer.");
    }
}

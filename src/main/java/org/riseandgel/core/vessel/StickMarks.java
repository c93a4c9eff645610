package org.riseandgel.core.vessel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/**
 * The marks of a volume stick that stands on the floor of a vessel: the mark for a ratio R is where the foam stands once
 * it is R times the liquid, height of (R × charge + displaced). What the stick itself displaces is neglected.
 */
public record StickMarks(List<Mark> marks) {
    /** More whole marks than anybody can read. */
    private static final int MOST_MARKS = 100;
    /** Rounding of the largest ratio itself must not push it over the rim. */
    private static final double HAIR = 1e-12;

    /** A mark: foam over liquid, and its height above the floor. */
    public record Mark(Ratio ratio, Length height) {}

    public StickMarks {
        marks = List.copyOf(marks);
    }

    /**
     * The marks for these ratios, each 1 or more, from a charge of liquid of more than zero.
     *
     * @param displaced what a whisk that stays in displaces; zero when it is taken out to read
     * @throws OutOfRangeException when a mark lies beyond the rim, naming the largest ratio that fits
     */
    public static StickMarks of(Vessel vessel, Volume charge, List<Ratio> ratios, Volume displaced) {
        double largest = largestRatio(vessel, charge, displaced).asNumber();
        return new StickMarks(ratios.stream()
                .map(ratio -> mark(vessel, charge, ratio, displaced, largest))
                .toList());
    }

    /** The marks 1×, 2×, 3×, … as far as they fit below the rim, at most 100 of them. */
    public static StickMarks whole(Vessel vessel, Volume charge, Volume displaced) {
        int last = (int)
                Math.min(MOST_MARKS, largestRatio(vessel, charge, displaced).asNumber() * (1 + HAIR));
        return of(
                vessel,
                charge,
                IntStream.rangeClosed(1, last).mapToObj(Ratio::of).toList(),
                displaced);
    }

    /**
     * The ratio at which the foam reaches the rim, (capacity − displaced) ÷ charge.
     *
     * @throws OutOfRangeException when the liquid itself does not fit
     */
    public static Ratio largestRatio(Vessel vessel, Volume charge, Volume displaced) {
        double liquid = Checks.positive("liquid in millilitres", charge.inMillilitres());
        double room = vessel.capacity().inMillilitres() - displaced.inMillilitres();
        if (room < liquid * (1 - HAIR)) {
            throw OutOfRangeException.because(
                    "liquid",
                    "the liquid is %s mL, and the vessel has room for %s mL"
                            .formatted(plain(liquid), plain(Math.max(0, room))));
        }
        return Ratio.of(room / liquid);
    }

    private static Mark mark(Vessel vessel, Volume charge, Ratio ratio, Volume displaced, double largest) {
        double wanted = ratio.asNumber();
        if (!(wanted >= 1)) {
            throw outOfRange(wanted, largest, "foam is never less than its liquid");
        }
        if (wanted > largest * (1 + HAIR)) {
            throw outOfRange(
                    wanted,
                    largest,
                    "the foam would go over the rim, and the largest ratio that fits is " + floor(largest));
        }
        double foam = Math.min(
                wanted * charge.inMillilitres() + displaced.inMillilitres(),
                vessel.capacity().inMillilitres());
        return new Mark(ratio, vessel.heightOf(Volume.ofMillilitres(foam)));
    }

    private static OutOfRangeException outOfRange(double wanted, double largest, String why) {
        return OutOfRangeException.because(
                "ratio", "ratio is %s, must be from 1 to %s: %s".formatted(plain(wanted), floor(largest), why));
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String floor(double value) {
        return new BigDecimal(value * (1 + HAIR))
                .setScale(2, RoundingMode.FLOOR)
                .stripTrailingZeros()
                .toPlainString();
    }
}

package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.function.DoubleSupplier;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.ProfiledVessel;

/** The steps from a poured-out vessel to the mark of the wanted ratio, and the wrong ways there. */
final class ProfileWork {
    private final Given given;
    private final Work work;
    private final ProfiledVessel vessel;
    private final double ratio;
    private final double charge;
    private final double whisk;

    ProfileWork(Given given, Work work, ProfiledVessel vessel) {
        this.given = given;
        this.work = work;
        this.vessel = vessel;
        ratio = given.get(ProfileVessel.RATIO, Ratio.class).asNumber();
        charge = given.get(ProfileVessel.CHARGE, Volume.class).inMillilitres();
        whisk = given.get(ProfileVessel.WHISK, Volume.class).inMillilitres();
    }

    /** What stands in the vessel at a ratio, the whisk included, in mL. */
    static double level(Given given, double ratio) {
        return ratio * given.get(ProfileVessel.CHARGE, Volume.class).inMillilitres()
                + given.get(ProfileVessel.WHISK, Volume.class).inMillilitres();
    }

    void write() {
        Length liquid = height(
                ProfileVessel.LIQUID_HEIGHT,
                "Height of the liquid: the mark 1×",
                stands("liquidLevel", "Liquid and whisk", 1));
        Length mark =
                height(ProfileVessel.MARK_HEIGHT, "Height of the mark", stands("foamLevel", "Foam and whisk", ratio));
        Length freeboard = work.step(
                ProfileVessel.FREEBOARD,
                "Room left below the rim",
                "depth − height of the mark",
                "{} − {}",
                Length.ofMillimetres(Math.max(0, vessel.depth().inMillimetres() - mark.inMillimetres())),
                CENTIMETRE,
                Work.In.of(vessel.depth(), CENTIMETRE),
                Work.In.of(mark, CENTIMETRE));
        work.result(ProfileVessel.LIQUID_HEIGHT, liquid);
        work.result(ProfileVessel.MARK_HEIGHT, mark);
        work.result(ProfileVessel.FREEBOARD, freeboard);
        work.result(ProfileVessel.LARGEST_RATIO, largest());
        slips(liquid);
    }

    private Volume stands(String id, String label, double times) {
        return work.step(
                id,
                label,
                "V = ratio × liquid + whisk",
                "{} × {} + {}",
                millilitres(times * charge + whisk),
                MILLILITRE,
                Work.In.of(Ratio.of(times), ONE),
                Work.In.of(millilitres(charge), MILLILITRE),
                Work.In.of(millilitres(whisk), MILLILITRE));
    }

    private Length height(String id, String label, Volume level) {
        return work.step(
                id,
                label,
                "the height at which V stands in your table, on the curve between two lines",
                "at {}",
                vessel.heightOf(millilitres(
                        Math.min(level.inMillilitres(), vessel.capacity().inMillilitres()))),
                CENTIMETRE,
                Work.In.of(level, MILLILITRE));
    }

    private Ratio largest() {
        double full = vessel.capacity().inMillilitres();
        return work.step(
                ProfileVessel.LARGEST_RATIO,
                "Largest ratio below the rim",
                "(all that the vessel holds − whisk) ÷ liquid",
                "({} − {}) ÷ {}",
                Ratio.of((full - whisk) / charge),
                ONE,
                Work.In.of(vessel.capacity(), MILLILITRE),
                Work.In.of(millilitres(whisk), MILLILITRE),
                Work.In.of(millilitres(charge), MILLILITRE));
    }

    private void slips(Length liquid) {
        double wrong = ratio * liquid.inMillimetres();
        work.slip(
                Slip.LIQUID_HEIGHT_MULTIPLIED,
                ProfileVessel.MARK_HEIGHT,
                () -> Length.ofMillimetres(wrong),
                "The vessel does not hold the same in every centimetre: twice the volume is not twice the height.");
        mark(Slip.GAIN_FOR_RATIO, () -> (ratio + 1) * charge + whisk);
        mark(Slip.WHISK_LEFT_OUT, () -> ratio * charge);
        mark(Slip.WHISK_MULTIPLIED, () -> ratio * (charge + whisk));
        double capacity = vessel.capacity().inMillilitres();
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                ProfileVessel.LARGEST_RATIO,
                () -> Ratio.of(charge / (capacity - whisk)),
                "The ratio is what the vessel holds over the liquid.");
        work.slip(Slip.WHISK_LEFT_OUT, ProfileVessel.LARGEST_RATIO, () -> Ratio.of(capacity / charge));
        if (given.choice(ProfileVessel.POURED).equals(ProfileVessel.BY_MASS)) {
            densityLeftOut();
        }
    }

    /** Grams read as millilitres: the same table, poured with a liquid of 1 g/mL. */
    private void densityLeftOut() {
        ProfiledVessel light = ProfiledVessel.ofMasses(
                given.rows(ProfileVessel.MASSES).stream()
                        .map(row -> new ProfiledVessel.WeighedRow(row.get(1, Length.class), row.get(0, Mass.class)))
                        .toList(),
                Density.ofGramsPerMillilitre(1));
        work.slip(
                Slip.DENSITY_LEFT_OUT,
                ProfileVessel.MARK_HEIGHT,
                () -> light.heightOf(millilitres(ratio * charge + whisk)));
    }

    private void mark(Slip slip, DoubleSupplier level) {
        work.slip(slip, ProfileVessel.MARK_HEIGHT, () -> vessel.heightOf(millilitres(level.getAsDouble())));
    }

    private static Volume millilitres(double value) {
        return Volume.ofMillilitres(value);
    }
}

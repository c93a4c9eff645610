package org.riseandgel.bench;

import java.util.function.Supplier;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.Cylinder;

/** The wrong ways from a vessel and its liquid to the mark on the stick. */
final class StickSlips {
    private final Work work;
    private final RoundWall wall;
    private final boolean tapered;
    private final double charge;
    private final double ratio;
    private final double whisk;

    StickSlips(Given given, Work work) {
        this.work = work;
        this.tapered = MarkStick.isTapered(given);
        Length floor = Cylinder.radius(given.get(MarkStick.BOTTOM, Length.class));
        Length rim = tapered ? Cylinder.radius(given.get(MarkStick.TOP, Length.class)) : floor;
        this.wall = new RoundWall(floor, rim, given.get(MarkStick.DEPTH, Length.class));
        this.charge = given.get(MarkStick.CHARGE, Volume.class).inMillilitres();
        this.ratio = given.get(MarkStick.RATIO, Ratio.class).asNumber();
        this.whisk = given.get(MarkStick.WHISK, Volume.class).inMillilitres();
    }

    void write() {
        liquidSlips();
        markSlips();
        largestRatioSlips();
    }

    private void liquidSlips() {
        liquid(Slip.DIAMETER_FOR_RADIUS, () -> height(wall.scaled(2), charge + whisk));
        liquid(Slip.RADIUS_FOR_DIAMETER, () -> height(wall.scaled(0.5), charge + whisk));
        liquid(Slip.WHISK_LEFT_OUT, () -> height(wall, charge));
        if (tapered) {
            liquid(Slip.STRAIGHT_FOR_TAPERED, () -> height(wall.uprightOnFloor(), charge + whisk));
        }
    }

    private void markSlips() {
        double foam = ratio * charge + whisk;
        mark(Slip.DIAMETER_FOR_RADIUS, () -> height(wall.scaled(2), foam));
        mark(Slip.RADIUS_FOR_DIAMETER, () -> height(wall.scaled(0.5), foam));
        mark(Slip.GAIN_FOR_RATIO, () -> height(wall, foam + charge));
        mark(Slip.WHISK_LEFT_OUT, () -> height(wall, foam - whisk));
        mark(Slip.WHISK_MULTIPLIED, () -> height(wall, ratio * (charge + whisk)));
        if (tapered) {
            mark(Slip.LIQUID_HEIGHT_MULTIPLIED, () -> times(ratio, height(wall, charge + whisk)));
            mark(Slip.STRAIGHT_FOR_TAPERED, () -> height(wall.uprightOnFloor(), foam));
        }
    }

    private void largestRatioSlips() {
        largest(Slip.DIAMETER_FOR_RADIUS, () -> largest(capacity(wall.scaled(2)) - whisk));
        largest(Slip.RADIUS_FOR_DIAMETER, () -> largest(capacity(wall.scaled(0.5)) - whisk));
        largest(Slip.WHISK_LEFT_OUT, () -> largest(capacity(wall)));
        largest(Slip.RATIO_TURNED_ROUND, () -> Ratio.of(charge / (capacity(wall) - whisk)));
        largest(Slip.GAIN_FOR_RATIO, () -> largest(capacity(wall) - whisk - charge));
        largest(
                Slip.AREA_FOR_VOLUME,
                () -> largest(Cylinder.floorArea(wall.floorRadius()).inSquareCentimetres() - whisk));
        if (tapered) {
            largest(Slip.STRAIGHT_FOR_TAPERED, () -> largest(capacity(wall.uprightOnFloor()) - whisk));
        }
    }

    private void liquid(Slip slip, Supplier<Length> wrong) {
        work.slip(slip, MarkStick.LIQUID_HEIGHT, wrong);
    }

    private void mark(Slip slip, Supplier<Length> wrong) {
        work.slip(slip, MarkStick.MARK_HEIGHT, wrong);
        work.slip(
                slip,
                MarkStick.FREEBOARD,
                () -> Length.ofMillimetres(
                        wall.depth().inMillimetres() - wrong.get().inMillimetres()));
    }

    private void largest(Slip slip, Supplier<Ratio> wrong) {
        work.slip(slip, MarkStick.LARGEST_RATIO, wrong);
    }

    private Ratio largest(double room) {
        return Ratio.of(room / charge);
    }

    private static Length height(RoundWall wall, double millilitres) {
        return wall.heightOf(Volume.ofMillilitres(millilitres));
    }

    private static double capacity(RoundWall wall) {
        return wall.capacity().inMillilitres();
    }

    private static Length times(double factor, Length length) {
        return Length.ofMillimetres(factor * length.inMillimetres());
    }
}

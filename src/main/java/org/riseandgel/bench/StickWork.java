package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.SQUARE_CENTIMETRE;

import org.riseandgel.core.quantity.Area;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.Cylinder;
import org.riseandgel.core.vessel.Frustum;

/** The steps from a vessel and its liquid to the mark on the stick. */
final class StickWork {
    private final Work work;
    private final Length bottom;
    private final Length top;
    private final Length depth;
    private final Volume charge;
    private final Ratio ratio;
    private final Volume whisk;

    StickWork(Given given, Work work) {
        this.work = work;
        this.bottom = given.get(MarkStick.BOTTOM, Length.class);
        this.top = given.get(MarkStick.TOP, Length.class);
        this.depth = given.get(MarkStick.DEPTH, Length.class);
        this.charge = given.get(MarkStick.CHARGE, Volume.class);
        this.ratio = given.get(MarkStick.RATIO, Ratio.class);
        this.whisk = given.get(MarkStick.WHISK, Volume.class);
    }

    void workStraight() {
        Length radius = radius("radius", "Inside radius", "r = diameter ÷ 2", bottom);
        Area floor = work.step(
                "floorArea",
                "Area of the floor",
                "A = π × r²",
                "π × {} × {}",
                Cylinder.floorArea(radius),
                SQUARE_CENTIMETRE,
                cm(radius),
                cm(radius));
        Volume liquid = liquid();
        Length low = uprightHeight(MarkStick.LIQUID_HEIGHT, "Height of the liquid", liquid, floor);
        Volume foam = foam();
        Length mark = uprightHeight(MarkStick.MARK_HEIGHT, "Height of the mark", foam, floor);
        Volume capacity = work.step(
                "capacity",
                "What the vessel holds up to the rim",
                "V = A × depth",
                "{} × {}",
                Cylinder.volume(floor, depth),
                MILLILITRE,
                Work.In.of(floor, SQUARE_CENTIMETRE),
                cm(depth));
        finish(low, mark, capacity);
    }

    void workTapered() {
        Length floor = radius("floorRadius", "Radius at the floor", "r₀ = diameter at the floor ÷ 2", bottom);
        Length rim = radius("rimRadius", "Radius at the rim", "r₁ = diameter at the rim ÷ 2", top);
        Volume liquid = liquid();
        Length liquidRadius = levelRadius("liquidRadius", "Radius where the liquid stands", floor, rim, liquid);
        Length low = leaningHeight(MarkStick.LIQUID_HEIGHT, "Height of the liquid", liquid, floor, liquidRadius);
        Volume foam = foam();
        Length markRadius = levelRadius("markRadius", "Radius where the foam will stand", floor, rim, foam);
        Length mark = leaningHeight(MarkStick.MARK_HEIGHT, "Height of the mark", foam, floor, markRadius);
        Volume capacity = work.step(
                "capacity",
                "What the vessel holds up to the rim",
                "V = π × depth × (r₀² + r₀ × r₁ + r₁²) ÷ 3",
                "π × {} × (({})² + {} × {} + ({})²) ÷ 3",
                Frustum.volume(floor, rim, depth),
                MILLILITRE,
                cm(depth),
                cm(floor),
                cm(floor),
                cm(rim),
                cm(rim));
        finish(low, mark, capacity);
    }

    private Length radius(String id, String label, String formula, Length diameter) {
        return work.step(id, label, formula, "{} ÷ 2", Cylinder.radius(diameter), CENTIMETRE, cm(diameter));
    }

    /** What stands in the vessel before whipping; a step of its own only when the whisk counts. */
    private Volume liquid() {
        if (whisk.inMillilitres() == 0) {
            return charge;
        }
        return work.step(
                "liquidVolume",
                "Liquid and whisk together",
                "V = liquid + whisk",
                "{} + {}",
                sum(charge, whisk),
                MILLILITRE,
                ml(charge),
                ml(whisk));
    }

    private Volume foam() {
        Volume alone = Volume.ofMillilitres(ratio.asNumber() * charge.inMillilitres());
        if (whisk.inMillilitres() == 0) {
            return work.step(
                    "foamVolume",
                    "Foam at the wanted ratio",
                    "V = ratio × liquid",
                    "{} × {}",
                    alone,
                    MILLILITRE,
                    Work.In.of(ratio, ONE),
                    ml(charge));
        }
        return work.step(
                "foamVolume",
                "Foam at the wanted ratio, and the whisk",
                "V = ratio × liquid + whisk",
                "{} × {} + {}",
                sum(alone, whisk),
                MILLILITRE,
                Work.In.of(ratio, ONE),
                ml(charge),
                ml(whisk));
    }

    private Length uprightHeight(String id, String label, Volume volume, Area floor) {
        return work.step(
                id,
                label,
                "h = V ÷ A",
                "{} ÷ {}",
                Cylinder.height(volume, floor),
                CENTIMETRE,
                ml(volume),
                Work.In.of(floor, SQUARE_CENTIMETRE));
    }

    private Length levelRadius(String id, String label, Length floor, Length rim, Volume volume) {
        return work.step(
                id,
                label,
                "r³ = r₀³ + 3 × V × (r₁ − r₀) ÷ (π × depth)",
                "³√( ({})³ + 3 × {} × ({} − {}) ÷ (π × {}) )",
                Frustum.levelRadius(floor, rim, depth, volume),
                CENTIMETRE,
                cm(floor),
                ml(volume),
                cm(rim),
                cm(floor),
                cm(depth));
    }

    private Length leaningHeight(String id, String label, Volume volume, Length floor, Length level) {
        return work.step(
                id,
                label,
                "h = 3 × V ÷ (π × (r₀² + r₀ × r + r²))",
                "3 × {} ÷ (π × (({})² + {} × {} + ({})²))",
                Frustum.height(volume, floor, level),
                CENTIMETRE,
                ml(volume),
                cm(floor),
                cm(floor),
                cm(level),
                cm(level));
    }

    private void finish(Length low, Length mark, Volume capacity) {
        work.result(MarkStick.LIQUID_HEIGHT, low);
        work.result(MarkStick.MARK_HEIGHT, mark);
        double room = Checks.notNegative("room above the mark", depth.inMillimetres() - mark.inMillimetres());
        work.result(
                MarkStick.FREEBOARD,
                work.step(
                        MarkStick.FREEBOARD,
                        "Room left above the mark",
                        "depth − h",
                        "{} − {}",
                        Length.ofMillimetres(room),
                        CENTIMETRE,
                        cm(depth),
                        cm(mark)));
        double most = (capacity.inMillilitres() - whisk.inMillilitres()) / charge.inMillilitres();
        boolean whiskCounts = whisk.inMillilitres() > 0;
        work.result(
                MarkStick.LARGEST_RATIO,
                work.step(
                        MarkStick.LARGEST_RATIO,
                        "Largest ratio that fits",
                        whiskCounts ? "(capacity − whisk) ÷ liquid" : "capacity ÷ liquid",
                        whiskCounts ? "({} − {}) ÷ {}" : "{} ÷ {}",
                        Ratio.of(most),
                        ONE,
                        whiskCounts
                                ? new Work.In[] {ml(capacity), ml(whisk), ml(charge)}
                                : new Work.In[] {ml(capacity), ml(charge)}));
    }

    private static Volume sum(Volume one, Volume other) {
        return Volume.ofMillilitres(one.inMillilitres() + other.inMillilitres());
    }

    private static Work.In cm(Quantity length) {
        return in(length, CENTIMETRE);
    }

    private static Work.In ml(Quantity volume) {
        return in(volume, MILLILITRE);
    }

    private static Work.In in(Quantity quantity, Unit unit) {
        return Work.In.of(quantity, unit);
    }
}

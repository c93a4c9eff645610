package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import org.riseandgel.core.drying.WaterLeft;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;

/** How much water is left in a piece, from its mass at first, now, and dry. */
public final class CompareWater implements Calculation {
    static final String TRAY = "tray";
    static final String FIRST = "first";
    static final String NOW = "now";
    static final String DRY = "dry";
    static final String BARE_FIRST = "bareFirst";
    static final String BARE_NOW = "bareNow";
    static final String WATER_AT_FIRST = "waterAtFirst";
    static final String WATER_NOW = "waterNow";
    static final String SHARE_LEFT = "shareLeft";

    @Override
    public String id() {
        return "water-left";
    }

    @Override
    public String title() {
        return "Water left in a piece";
    }

    @Override
    public String purpose() {
        return "How wet a piece still is, when you know what it weighs dry.";
    }

    @Override
    public Task task() {
        return Task.DRYING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                mass(FIRST, "First weighing, wet", "With what lies under it.", 412),
                mass(NOW, "Weighing now", "With the same thing under it.", 267),
                mass(DRY, "The bare piece when dry", "From an earlier piece of the same mold and batch size.", 240),
                new Input.Measured(
                        TRAY, "What lies under it", "A tray or a mold half; 0 if nothing does.", GRAM, 0, 50_000, 0.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(SHARE_LEFT, "Share of the water that is left", PERCENT, 0.1),
                new Result(WATER_NOW, "Water left in the piece", GRAM, 0.1),
                new Result(WATER_AT_FIRST, "Water at the first weighing", GRAM, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("first") ? FIRST : what.equals("tray") ? TRAY : NOW;
    }

    @Override
    public void work(Given given, Work work) {
        Mass dry = given.get(DRY, Mass.class);
        Mass first = bare(BARE_FIRST, "The bare piece at first", FIRST, given, work);
        Mass now = bare(BARE_NOW, "The bare piece now", NOW, given, work);
        WaterLeft water = new WaterLeft(first, now, dry);
        Mass atFirst =
                water(WATER_AT_FIRST, "Water at the first weighing", "first − dry", water.atFirst(), first, dry, work);
        Mass left = water(WATER_NOW, "Water left in the piece", "now − dry", water.left(), now, dry, work);
        work.result(
                SHARE_LEFT,
                work.step(
                        SHARE_LEFT,
                        "Share of the water that is left",
                        "water left ÷ water at first",
                        "{} ÷ {}",
                        Concentration.ofPercent(100 * left.inGrams() / atFirst.inGrams()),
                        PERCENT,
                        Work.In.of(left, GRAM),
                        Work.In.of(atFirst, GRAM)));
        slips(given, water, work);
        work.note("Weigh again after an hour: a dry piece weighs the same (common practice, no source).");
    }

    private static Mass bare(String id, String label, String weighing, Given given, Work work) {
        Mass whole = given.get(weighing, Mass.class);
        Mass tray = given.get(TRAY, Mass.class);
        if (!(whole.inGrams() > tray.inGrams())) {
            throw OutOfRangeException.because(
                    "tray",
                    "what lies under the piece is %s g, must be less than the %s g of both"
                            .formatted(tray.inGrams(), whole.inGrams()));
        }
        return work.step(
                id,
                label,
                "weighing − what lies under it",
                "{} − {}",
                Mass.ofGrams(whole.inGrams() - tray.inGrams()),
                GRAM,
                Work.In.of(whole, GRAM),
                Work.In.of(tray, GRAM));
    }

    private static Mass water(String id, String label, String formula, Mass water, Mass wet, Mass dry, Work work) {
        work.result(
                id,
                work.step(id, label, formula, "{} − {}", water, GRAM, Work.In.of(wet, GRAM), Work.In.of(dry, GRAM)));
        return water;
    }

    private static void slips(Given given, WaterLeft right, Work work) {
        double first = given.get(FIRST, Mass.class).inGrams() - right.dry().inGrams();
        double now = given.get(NOW, Mass.class).inGrams() - right.dry().inGrams();
        work.slip(Slip.TARE_LEFT_IN, WATER_AT_FIRST, () -> Mass.ofGrams(first));
        work.slip(Slip.TARE_LEFT_IN, WATER_NOW, () -> Mass.ofGrams(now));
        work.slip(Slip.TARE_LEFT_IN, SHARE_LEFT, () -> Concentration.ofPercent(100 * now / first));
        work.slip(
                Slip.DRY_FOR_LEFT,
                SHARE_LEFT,
                () -> Concentration.ofPercent(100 - right.shareLeft().inPercent()));
        work.slip(
                Slip.DRY_FOR_LEFT,
                WATER_AT_FIRST,
                () -> Mass.ofGrams(right.atFirst().inGrams() - right.left().inGrams()),
                "That is the water which is gone by now, not all that was there.");
        work.slip(
                Slip.DRY_FOR_LEFT,
                WATER_NOW,
                () -> Mass.ofGrams(right.atFirst().inGrams() - right.left().inGrams()),
                "That is the water which is gone, not the water which is left.");
        work.slip(
                Slip.WRONG_WHOLE,
                SHARE_LEFT,
                () -> Concentration.ofPercent(
                        100 * right.left().inGrams() / right.now().inGrams()),
                "The share counts on the water at first, not on the whole piece.");
        work.slip(
                Slip.DRY_LEFT_IN,
                SHARE_LEFT,
                () -> Concentration.ofPercent(
                        100 * right.now().inGrams() / right.first().inGrams()));
    }

    private static Input.Measured mass(String name, String label, String help, double byDefault) {
        return new Input.Measured(name, label, help, GRAM, 0.1, 50_000, byDefault);
    }
}

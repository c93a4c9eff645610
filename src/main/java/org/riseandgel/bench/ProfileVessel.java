package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.ProfiledVessel;
import org.riseandgel.core.vessel.StickMarks;

/** Where the marks of a volume stick go in a vessel of any shape, from pouring into it step by step. */
public final class ProfileVessel implements Calculation {
    static final String POURED = "poured";
    static final String BY_VOLUME = "volume";
    static final String BY_MASS = "mass";
    static final String VOLUMES = "volumes";
    static final String MASSES = "masses";
    static final String DENSITY = "pouredDensity";
    static final String CHARGE = "charge";
    static final String RATIO = "ratio";
    static final String WHISK = "whisk";
    static final String MARK_HEIGHT = "markHeight";
    static final String LIQUID_HEIGHT = "liquidHeight";
    static final String FREEBOARD = "freeboard";
    static final String LARGEST_RATIO = "largestRatio";

    private static final double STICK = 0.1;
    private static final double DEEPEST = 200;

    @Override
    public String id() {
        return "vessel-profile";
    }

    @Override
    public String title() {
        return "Stick for any vessel";
    }

    @Override
    public String purpose() {
        return "Where the mark of a volume stick goes in a vessel of any shape, from pouring water into it step by step.";
    }

    @Override
    public Task task() {
        return Task.WHIPPING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Choice(
                        POURED,
                        "How you poured",
                        "Only the table that belongs to your choice is used.",
                        List.of(
                                new Input.Option(BY_VOLUME, "by volume: a measuring jug"),
                                new Input.Option(BY_MASS, "by mass: the vessel on a balance"))),
                table(
                        VOLUMES,
                        "Poured so far, by volume",
                        "A step to a line: all that is in; how high it stands, as in 250 mL; 4 cm. The last is the rim.",
                        new Input.Column("volume", MILLILITRE, 0, 200_000),
                        List.of(300.0, 700.0, 1300.0, 2200.0)),
                table(
                        MASSES,
                        "Poured so far, by mass",
                        "A step to a line: all that is in; how high it stands, as in 250 g; 4 cm. The last is the rim.",
                        new Input.Column("mass", GRAM, 0, 200_000),
                        List.of(299.0, 699.0, 1298.0, 2196.0)),
                new Input.Measured(
                        DENSITY,
                        "Density of what you poured",
                        "0.998 g/mL is water of 20 °C. Used when you poured by mass.",
                        GRAM_PER_MILLILITRE,
                        0.5,
                        2,
                        0.998),
                new Input.Measured(
                        CHARGE,
                        "Liquid before whipping",
                        "All that goes into the vessel.",
                        MILLILITRE,
                        1,
                        200_000,
                        450.0),
                new Input.Measured(
                        RATIO,
                        "Wanted expansion ratio",
                        "How many times the liquid's volume the foam has. 4 is only a start; your formula decides.",
                        ONE,
                        1,
                        20,
                        4.0),
                new Input.Measured(
                        WHISK,
                        "Volume of the whisk",
                        "Only if the whisk stays in, and is covered, while you read the stick. 0 if you take it out.",
                        MILLILITRE,
                        0,
                        5_000,
                        0.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(MARK_HEIGHT, "Height of the mark for the wanted ratio", CENTIMETRE, STICK),
                new Result(LIQUID_HEIGHT, "Height of the liquid: the mark 1×", CENTIMETRE, STICK),
                new Result(FREEBOARD, "Room left between that mark and the rim", CENTIMETRE, STICK),
                new Result(LARGEST_RATIO, "Largest ratio that fits below the rim", ONE, 0.01));
    }

    @Override
    public boolean uses(String input, Given given) {
        return switch (input) {
            case VOLUMES -> given.choice(POURED).equals(BY_VOLUME);
            case MASSES, DENSITY -> given.choice(POURED).equals(BY_MASS);
            default -> true;
        };
    }

    @Override
    public void work(Given given, Work work) {
        ProfiledVessel vessel = vessel(given);
        Volume charge = given.get(CHARGE, Volume.class);
        Volume whisk = given.get(WHISK, Volume.class);
        // Refuses a liquid or a mark that does not fit, and names the largest ratio that does.
        StickMarks.of(vessel, charge, List.of(given.get(RATIO, Ratio.class)), whisk);
        new ProfileWork(given, work, vessel).write();
        work.table(MarkStick.marks(StickMarks.whole(vessel, charge, whisk)));
        work.note("All heights are from the inside floor, where the stick stands.");
        work.note("Between two steps the height follows a smooth curve that never dips. Pour more steps where the shape"
                + " of the vessel changes.");
    }

    @Override
    public String inputAt(String what) {
        return what.equals("ratio") ? RATIO : what.equals("liquid") ? CHARGE : POURED;
    }

    @Override
    public Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        ProfiledVessel vessel = vessel(given);
        double full = vessel.capacity().inMillilitres();
        double foam = ProfileWork.level(given, given.get(RATIO, Ratio.class).asNumber());
        Length height = (Length) outcome.told(MARK_HEIGHT);
        String mark = text.toReadability(height, CENTIMETRE, STICK);
        CurveChart chart = new CurveChart(
                "profile",
                "Height in the vessel against what is in it",
                "The mark for %s× is at %s of %s."
                        .formatted(
                                text.of(given.get(RATIO, Ratio.class), ONE),
                                mark,
                                text.toReadability(vessel.depth(), CENTIMETRE, STICK)),
                new CurveChart.Axis("in the vessel, mL", 0, full),
                new CurveChart.Axis("height, cm", 0, vessel.depth().inCentimetres()));
        chart.curve(0, millilitres -> vessel.heightOf(Volume.ofMillilitres(Math.min(full, millilitres)))
                        .inCentimetres())
                .level(height.inCentimetres(), mark);
        vessel.rows()
                .forEach(row ->
                        chart.reading(row.volume().inMillilitres(), row.height().inCentimetres()));
        return Optional.of(chart.mark(foam, height.inCentimetres(), "foam").svg(text));
    }

    /** The vessel as it was poured out. */
    static ProfiledVessel vessel(Given given) {
        if (given.choice(POURED).equals(BY_VOLUME)) {
            return ProfiledVessel.of(given.rows(VOLUMES).stream()
                    .map(row -> new ProfiledVessel.Row(row.get(1, Length.class), row.get(0, Volume.class)))
                    .toList());
        }
        return ProfiledVessel.ofMasses(
                given.rows(MASSES).stream()
                        .map(row -> new ProfiledVessel.WeighedRow(row.get(1, Length.class), row.get(0, Mass.class)))
                        .toList(),
                given.get(DENSITY, Density.class));
    }

    private static Input table(String name, String label, String help, Input.Column poured, List<Double> amounts) {
        return new Input.Readings(
                name,
                label,
                help,
                List.of(poured, new Input.Column("height", CENTIMETRE, 0, DEEPEST)),
                List.of(
                        List.of(amounts.get(0), 5.0),
                        List.of(amounts.get(1), 10.0),
                        List.of(amounts.get(2), 15.0),
                        List.of(amounts.get(3), 20.0)));
    }
}

package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.StickMarks;
import org.riseandgel.core.vessel.StraightVessel;
import org.riseandgel.core.vessel.TaperedVessel;
import org.riseandgel.core.vessel.Vessel;

/** Where the marks of a volume stick go in a straight or tapered vessel. */
public final class MarkStick implements Calculation {
    static final String SHAPE = "shape";
    static final String STRAIGHT = "straight";
    static final String TAPERED = "tapered";
    static final String BOTTOM = "bottomDiameter";
    static final String TOP = "topDiameter";
    static final String DEPTH = "depth";
    static final String CHARGE = "charge";
    static final String RATIO = "ratio";
    static final String WHISK = "whisk";
    static final String LIQUID_HEIGHT = "liquidHeight";
    static final String MARK_HEIGHT = "markHeight";
    static final String LARGEST_RATIO = "largestRatio";
    static final String FREEBOARD = "freeboard";

    @Override
    public String id() {
        return "stick-marks";
    }

    @Override
    public String title() {
        return "Volume stick";
    }

    @Override
    public String purpose() {
        return "Where the foam must stand in the vessel when it has risen as far as you want.";
    }

    @Override
    public Task task() {
        return Task.WHIPPING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Choice(
                        SHAPE,
                        "Shape of the vessel",
                        "Measure the inside diameter at the floor and at the rim: if they differ, it is tapered.",
                        List.of(
                                new Input.Option(STRAIGHT, "Straight: the same width all the way up"),
                                new Input.Option(TAPERED, "Tapered: one end is wider than the other"))),
                new Input.Measured(
                        BOTTOM, "Inside diameter at the floor", "Inside, wall to wall.", CENTIMETRE, 1, 100, 12.0),
                new Input.Measured(
                        TOP,
                        "Inside diameter at the rim",
                        "Inside, wall to wall. Only a tapered vessel needs it.",
                        CENTIMETRE,
                        1,
                        100,
                        16.0),
                new Input.Measured(
                        DEPTH, "Inside depth", "From the floor straight up to the rim.", CENTIMETRE, 1, 200, 25.0),
                new Input.Measured(
                        CHARGE,
                        "Liquid before whipping",
                        "All that goes into the vessel.",
                        MILLILITRE,
                        1,
                        200_000,
                        500.0),
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
                new Result(MARK_HEIGHT, "Height of the mark for the wanted ratio", CENTIMETRE, 0.1),
                new Result(LIQUID_HEIGHT, "Height of the liquid: the mark 1×", CENTIMETRE, 0.1),
                new Result(FREEBOARD, "Room left between that mark and the rim", CENTIMETRE, 0.1),
                new Result(LARGEST_RATIO, "Largest ratio that fits below the rim", ONE, 0.01));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("ratio") ? RATIO : CHARGE;
    }

    @Override
    public boolean uses(String input, Given given) {
        return !input.equals(TOP) || isTapered(given);
    }

    @Override
    public void work(Given given, Work work) {
        Vessel vessel = vessel(given);
        Volume charge = given.get(CHARGE, Volume.class);
        Volume whisk = given.get(WHISK, Volume.class);
        // Refuses a liquid or a mark that does not fit, and names the largest ratio that does.
        StickMarks.of(vessel, charge, List.of(given.get(RATIO, Ratio.class)), whisk);
        StickWork stick = new StickWork(given, work);
        if (isTapered(given)) {
            stick.workTapered();
        } else {
            stick.workStraight();
        }
        new StickSlips(given, work).write();
        work.table(marks(StickMarks.whole(vessel, charge, whisk)));
        work.note("All heights are from the inside floor, where the stick stands.");
        if (whisk.inMillilitres() > 0) {
            work.note(
                    "The whisk must be covered each time you read the stick: only then does it lift the level in full.");
        }
    }

    @Override
    public Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        return Optional.of(new VesselDrawing(given, outcome, text).svg());
    }

    /** The vessel that was described. */
    static Vessel vessel(Given given) {
        Length bottom = given.get(BOTTOM, Length.class);
        Length depth = given.get(DEPTH, Length.class);
        return isTapered(given)
                ? new TaperedVessel(bottom, given.get(TOP, Length.class), depth)
                : new StraightVessel(bottom, depth);
    }

    static boolean isTapered(Given given) {
        return given.choice(SHAPE).equals(TAPERED);
    }

    static Outcome.Table marks(StickMarks marks) {
        return new Outcome.Table(
                "Marks on the stick, from the floor of the vessel",
                List.of("Mark", "Height"),
                marks.marks().stream()
                        .map(mark -> List.of(
                                Outcome.Cell.of(mark.ratio(), ONE, 1), Outcome.Cell.of(mark.height(), CENTIMETRE, 0.1)))
                        .toList());
    }
}

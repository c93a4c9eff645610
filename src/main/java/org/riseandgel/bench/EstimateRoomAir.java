package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.CUBIC_METRE_PER_HOUR;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM_PER_CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PER_HOUR;

import java.util.List;

/** What a release of salt dust comes to in the air of a room. */
public final class EstimateRoomAir implements Calculation {
    static final String DUST = "dust";
    static final String OVER = "over";
    static final String ROOM = "room";
    static final String VENTILATION = "ventilation";
    static final String BY_FLOW = "flow";
    static final String BY_CHANGES = "changes";
    static final String FLOW = "flow";
    static final String CHANGES = "airChanges";
    static final String TIME = "time";
    static final String SALT_AIR = "saltAir";
    static final String FLUORIDE_AIR = "fluorideAir";
    static final String AGAINST_LIMIT = "againstLimit";

    private static final double AIR_STEP = 0.01;

    @Override
    public String id() {
        return "room-air";
    }

    @Override
    public String title() {
        return "Salt dust in a room";
    }

    @Override
    public String purpose() {
        return "What dust of the gelling salt would come to in the air of a room: an estimate to learn from, no measurement.";
    }

    @Override
    public Task task() {
        return Task.SALT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                SaltInputs.salt(),
                new Input.Measured(
                        DUST,
                        "Dust that gets into the air",
                        "A guess, to see what matters.",
                        MILLIGRAM,
                        0.001,
                        1e6,
                        2.0),
                new Input.Measured(
                        OVER, "within this time", "It goes on like that all the while.", MINUTE, 0.1, 1440, 1.0),
                new Input.Measured(
                        ROOM, "Volume of the room", "Length × width × height.", CUBIC_METRE, 1, 100_000, 30.0),
                new Input.Choice(
                        VENTILATION,
                        "Ventilation is known as",
                        "Only the one that you choose is used.",
                        List.of(
                                new Input.Option(BY_FLOW, "flow of fresh air"),
                                new Input.Option(BY_CHANGES, "air changes per hour"))),
                new Input.Measured(
                        FLOW, "Flow of fresh air", "0 if there is none.", CUBIC_METRE_PER_HOUR, 0, 100_000, 50.0),
                new Input.Measured(
                        CHANGES,
                        "Air changes",
                        "How often in an hour the air is replaced. 0 if there is no ventilation.",
                        PER_HOUR,
                        0,
                        60,
                        2.0),
                new Input.Measured(
                        TIME, "Time since the dust began", "When you ask for the air.", MINUTE, 0.1, 1440, 60.0));
    }

    @Override
    public List<Finding> findings() {
        return List.of(new Finding(AGAINST_LIMIT, "Against the limit"));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(FLUORIDE_AIR, "In the air, as fluoride (F)", MILLIGRAM_PER_CUBIC_METRE, AIR_STEP),
                new Result(SALT_AIR, "In the air, as salt", MILLIGRAM_PER_CUBIC_METRE, AIR_STEP),
                new Result(SaltInputs.SHARE_OF_LIMIT, "As a share of the limit", ONE, AIR_STEP));
    }

    @Override
    public String inputAt(String what) {
        return what.startsWith("air changes") || what.startsWith("air flow") ? FLOW : DUST;
    }

    @Override
    public boolean uses(String input, Given given) {
        return switch (input) {
            case FLOW -> given.choice(VENTILATION).equals(BY_FLOW);
            case CHANGES -> given.choice(VENTILATION).equals(BY_CHANGES);
            default -> true;
        };
    }

    @Override
    public void work(Given given, Work work) {
        new RoomAirWork(given, work).write();
        SaltInputs.limitNote(work);
        work.note(
                "It takes the air of the room as mixed evenly. Where the dust is raised there is more, often much more.");
    }

    @Override
    public List<String> cautions() {
        return List.of(GelInputs.CAUTION, SaltInputs.ESTIMATE_ONLY);
    }
}

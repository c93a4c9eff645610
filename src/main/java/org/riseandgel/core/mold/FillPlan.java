package org.riseandgel.core.mold;

import java.util.ArrayList;
import java.util.List;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

/**
 * A mold filled part by part: each part takes its room × (1 + overfill), and of the time for filling the share that it
 * has of the foam. Deep and fine parts come first, so that foam is worked into them while it is still wet: common
 * practice, no source.
 */
public record FillPlan(List<Portion> portions) {

    /** A part of the cavity and its room, more than zero, in the order of filling. */
    public record Part(String name, Volume room) {
        public Part {
            if (name.isBlank()) {
                throw OutOfRangeException.because("part", "part has no name, must have one");
            }
            Checks.positive("room of " + name + " in millilitres", room.inMillilitres());
        }
    }

    /** The foam for a part, and when it goes in, counted as the start was. */
    public record Portion(String name, Volume foam, TimeSpan start, TimeSpan end) {}

    public FillPlan {
        portions = List.copyOf(portions);
    }

    /**
     * The plan.
     *
     * @param parts one or more, in the order of filling
     * @param start when filling starts
     * @param filling how long all of it takes, more than zero
     * @throws OutOfRangeException when there is no part
     */
    public static FillPlan of(List<Part> parts, Concentration overfill, TimeSpan start, TimeSpan filling) {
        Checks.inRange("number of parts", parts.size(), 1, 1000);
        double seconds = Checks.positive("time for filling in seconds", filling.inSeconds());
        double room =
                parts.stream().mapToDouble(part -> part.room().inMillilitres()).sum();
        List<Portion> portions = new ArrayList<>(parts.size());
        double filled = 0;
        for (Part part : parts) {
            double next = filled + part.room().inMillilitres();
            portions.add(new Portion(
                    part.name(),
                    Volume.ofMillilitres(part.room().inMillilitres() * (1 + overfill.asFraction())),
                    TimeSpan.ofSeconds(start.inSeconds() + seconds * filled / room),
                    TimeSpan.ofSeconds(start.inSeconds() + seconds * next / room)));
            filled = next;
        }
        return new FillPlan(portions);
    }

    /** All the foam of the plan. */
    public Volume foam() {
        return Volume.ofMillilitres(
                portions.stream().mapToDouble(p -> p.foam().inMillilitres()).sum());
    }

    /** When the last part is full. */
    public TimeSpan end() {
        return portions.get(portions.size() - 1).end();
    }
}

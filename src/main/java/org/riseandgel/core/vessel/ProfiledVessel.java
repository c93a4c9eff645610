package org.riseandgel.core.vessel;

import java.util.ArrayList;
import java.util.List;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Volume;

/**
 * A vessel of any shape, known from a table: pour in a known volume or mass, read the height, pour on.
 *
 * <p>Between the rows it follows a monotone cubic (see {@link MonotoneCubic}); it never invents a dip or a bump that the
 * table does not have. An empty vessel stands at height 0: that row need not be written. The last row is the rim.
 */
public final class ProfiledVessel implements Vessel {
    /** One row of the table: what has been poured in so far, and how high it stands. */
    public record Row(Length height, Volume volume) {}

    /** One row of a table that was poured on a balance. */
    public record WeighedRow(Length height, Mass poured) {}

    private final List<Row> rows;
    private final MonotoneCubic curve;

    private ProfiledVessel(List<Row> rows) {
        this.rows = rows;
        this.curve = MonotoneCubic.through(
                rows.stream().mapToDouble(row -> row.height().inMillimetres()).toArray(),
                rows.stream().mapToDouble(row -> row.volume().inMillilitres()).toArray());
    }

    /**
     * From two or more rows, strictly rising in height and in volume.
     *
     * @throws OutOfRangeException when there are fewer rows or they do not rise, naming the row
     */
    public static ProfiledVessel of(List<Row> table) {
        if (table.size() < 2) {
            throw OutOfRangeException.because(
                    "table", "table has %d rows, must have 2 or more".formatted(table.size()));
        }
        List<Row> rows = withFloor(table);
        for (int i = 1; i < rows.size(); i++) {
            requireRising(rows.get(i - 1), rows.get(i), i + table.size() - rows.size() + 1);
        }
        return new ProfiledVessel(List.copyOf(rows));
    }

    /** As {@link #of(List)}, from what was poured on a balance: volume = mass ÷ density of the liquid poured. */
    public static ProfiledVessel ofMasses(List<WeighedRow> table, Density liquid) {
        return of(table.stream()
                .map(row -> new Row(
                        row.height(), Volume.ofMillilitres(row.poured().inGrams() / liquid.inGramsPerMillilitre())))
                .toList());
    }

    /** The rows, from the floor to the rim. */
    public List<Row> rows() {
        return rows;
    }

    @Override
    public Length depth() {
        return rows.get(rows.size() - 1).height();
    }

    @Override
    public Volume capacity() {
        return rows.get(rows.size() - 1).volume();
    }

    @Override
    public Volume volumeAt(Length height) {
        return Volume.ofMillilitres(curve.valueAt(Bounds.within(this, height).inMillimetres()));
    }

    @Override
    public Length heightOf(Volume volume) {
        return Length.ofMillimetres(curve.placeOf(Bounds.within(this, volume).inMillilitres()));
    }

    private static List<Row> withFloor(List<Row> table) {
        List<Row> rows = new ArrayList<>(table);
        Row first = table.get(0);
        if (first.height().inMillimetres() > 0 || first.volume().inMillilitres() > 0) {
            rows.add(0, new Row(Length.ofMillimetres(0), Volume.ofMillilitres(0)));
        }
        return rows;
    }

    private static void requireRising(Row below, Row above, int number) {
        boolean rises = above.height().inMillimetres() > below.height().inMillimetres()
                && above.volume().inMillilitres() > below.volume().inMillilitres();
        if (!rises) {
            throw OutOfRangeException.because(
                    "table",
                    "row %d is %s mm and %s mL, must be more than %s mm and more than %s mL"
                            .formatted(
                                    number,
                                    above.height().inMillimetres(),
                                    above.volume().inMillilitres(),
                                    below.height().inMillimetres(),
                                    below.volume().inMillilitres()));
        }
    }
}

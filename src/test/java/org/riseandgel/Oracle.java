package org.riseandgel;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.WrongAnswer;

/** Knows the right answers, because it looks where no learner can: at the stored seed. */
public final class Oracle {
    private final ExerciseLibrary library =
            ExerciseLibrary.load(List.of(), Catalogue.standard(), Set.of()).library();
    private final Connections database;

    /** The database cannot be asked any more. */
    public static final class Gone extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Gone(SQLException cause) {
            super(cause);
        }
    }

    /** Where the stored rows are, seen past the program under test. */
    @FunctionalInterface
    public interface Connections {
        Connection connect() throws SQLException;
    }

    public Oracle(Connections database) {
        this.database = database;
    }

    /** What to hand in for a part: the right value with its unit, or the right choice. */
    public String right(String draw, int part) {
        if (drawn(draw) instanceof DrawnChoice choice) {
            return choice.right();
        }
        DrawnPart asked = part(draw, part);
        return typed(asked.expected(), asked);
    }

    /** What to hand in for a part to be far off, by no known slip, or to choose wrongly. */
    public String wrong(String draw, int part) {
        if (drawn(draw) instanceof DrawnChoice choice) {
            return choice.wrong();
        }
        DrawnPart asked = part(draw, part);
        return typed(asked.expected().times(Rational.of(37, 10)).plus(Rational.of(7)), asked);
    }

    /** What somebody who makes one of the part's slips would type, and the slip. */
    public SlipTyped slip(String draw, int part) {
        DrawnPart asked = part(draw, part);
        WrongAnswer made = asked.wrongAnswers().stream()
                .filter(wrong -> wrong.slip() != Slip.POWER_OF_TEN)
                .findFirst()
                .orElseThrow();
        Unit unit = asked.part().unit();
        return new SlipTyped(made.slip(), typed(unit.fromBase(made.band().centre()), asked));
    }

    /** A slip and the answer that shows it. */
    public record SlipTyped(Slip slip, String typed) {}

    private static String typed(Rational value, DrawnPart asked) {
        return (value.toDecimal(6).toPlainString() + " " + asked.part().unit().symbol()).strip();
    }

    private DrawnPart part(String draw, int part) {
        return ((DrawnNumbers) drawn(draw)).part(part);
    }

    /** What to save for an item of a sitting: the right value with its unit, or the right choice. */
    public String rightItem(String sitting, int number) {
        String sql = "SELECT seed, source_text, skill || '/' || exercise_id FROM sitting_item JOIN exercise_version"
                + " USING (exercise_id, version) WHERE sitting_id = ?::uuid AND number = " + number;
        DrawnExercise drawn = drawn(sql, sitting);
        if (drawn instanceof DrawnChoice choice) {
            return choice.right();
        }
        DrawnPart asked = ((DrawnNumbers) drawn).part(0);
        return typed(asked.expected(), asked);
    }

    private DrawnExercise drawn(String draw) {
        String sql = "SELECT seed, source_text, skill || '/' || exercise_id FROM draw JOIN exercise_version"
                + " USING (exercise_id, version) WHERE id = ?::uuid";
        return drawn(sql, draw);
    }

    private DrawnExercise drawn(String sql, String id) {
        try (Connection connection = database.connect();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, id);
            ResultSet row = select.executeQuery();
            row.next();
            return library.drawer().again(library.parse(row.getString(3) + ".yaml", row.getString(2)), row.getLong(1));
        } catch (SQLException e) {
            throw new Gone(e);
        }
    }
}

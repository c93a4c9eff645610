package org.riseandgel.durability;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.ExerciseLibrary;

/** Knows the right answers, because it looks where no learner can: at the stored seed. */
final class Oracle {
    private final ExerciseLibrary library =
            ExerciseLibrary.load(List.of(), Catalogue.standard(), Set.of()).library();
    private final Database database;

    /** The database cannot be asked any more. */
    static final class Gone extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Gone(SQLException cause) {
            super(cause);
        }
    }

    /** Where the stored rows are, seen past the program under test. */
    record Database(String url, String user, String password) {
        Connection connect() throws SQLException {
            return DriverManager.getConnection(url, user, password);
        }
    }

    Oracle(Database database) {
        this.database = database;
    }

    /** What to type for a part: the right value with its unit, or one that is far off. */
    String answer(String draw, int part, boolean right) {
        DrawnPart asked = drawn(draw).part(part);
        Rational value = right
                ? asked.expected()
                : asked.expected().times(Rational.of(3)).plus(Rational.of(7));
        return value.toDecimal(6).toPlainString() + " " + asked.part().unit().symbol();
    }

    private DrawnExercise drawn(String draw) {
        String sql = "SELECT seed, source_text, skill || '/' || exercise_id FROM draw JOIN exercise_version"
                + " USING (exercise_id, version) WHERE id = ?::uuid";
        try (Connection connection = database.connect();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, draw);
            ResultSet row = select.executeQuery();
            row.next();
            return library.drawer().again(library.parse(row.getString(3) + ".yaml", row.getString(2)), row.getLong(1));
        } catch (SQLException e) {
            throw new Gone(e);
        }
    }
}

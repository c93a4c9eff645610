package org.riseandgel.progress;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.riseandgel.practice.StandingView;

/**
 * One person's line of a board as its page writes it. A board has 640 cells and more, and its page takes as long as the
 * template has expressions to look up: what a cell says is put together here, so that few are left to a cell.
 */
public record BoardLine(UUID id, String name, List<Cell> cells, Instant lastAt) {
    /**
     * What one cell says.
     *
     * @param answers where the answers are, seen from the site's root; null when there are none yet
     * @param icon the shape beside the words
     * @param tally how many of the answers were right
     */
    public record Cell(String answers, String icon, String words, String tally) {
        private static Cell of(String person, StandingView standing) {
            String icon = standing.state().icon();
            String words = standing.state().words();
            return standing.answers() == 0
                    ? new Cell(null, icon, words, "")
                    : new Cell(
                            "/people/" + person + "/answers?skill=" + standing.skill(),
                            icon,
                            words,
                            standing.rightAnswers() + " of " + standing.answers() + " right");
        }
    }

    static List<BoardLine> of(Boards.Board board) {
        return board.rows().stream().map(BoardLine::of).toList();
    }

    private static BoardLine of(Boards.PersonRow row) {
        String person = row.id().toString();
        return new BoardLine(
                row.id(),
                row.name(),
                row.cells().stream().map(cell -> Cell.of(person, cell)).toList(),
                row.lastAt());
    }
}

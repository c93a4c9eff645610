package org.riseandgel.sitting;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.riseandgel.course.Check;
import org.riseandgel.platform.sql.Row;

/** Makes records of rows of sittings and their items. */
final class SittingRows {
    private SittingRows() {}

    static StoredSitting sitting(Row row) throws SQLException {
        return new StoredSitting(
                row.uuid("id"),
                row.uuid("person_id"),
                row.text("check_id"),
                row.text("title"),
                row.text("pool_version"),
                new Check.Pass(row.number("pass_right"), row.number("items"), row.number("pass_critical_wrong")),
                row.longNumber("seed"),
                row.date("day"),
                row.instant("started_at"),
                row.instant("handed_in_at") == null ? null : result(row),
                List.of(item(row)));
    }

    private static StoredSitting.Result result(Row row) throws SQLException {
        return new StoredSitting.Result(
                row.instant("handed_in_at"),
                row.number("right_items"),
                row.number("critical_wrong"),
                row.flag("passed"),
                row.text("content_hash"),
                row.text("core_version"));
    }

    private static StoredItem item(Row row) throws SQLException {
        return new StoredItem(
                row.number("number"),
                row.text("exercise_id"),
                row.text("version"),
                row.text("skill"),
                row.flag("critical"),
                row.longNumber("item_seed"),
                row.text("typed"),
                row.text("read_value"),
                row.text("read_unit"),
                row.text("read_figures"),
                row.number("saves"),
                row.instant("saved_at"),
                row.text("verdict"),
                row.text("slip"),
                row.text("expected"));
    }

    /** One row for each item becomes one sitting with all of them. */
    static List<StoredSitting> fold(List<StoredSitting> rows) {
        Map<UUID, List<StoredItem>> items = new LinkedHashMap<>();
        Map<UUID, StoredSitting> firsts = new LinkedHashMap<>();
        for (StoredSitting row : rows) {
            firsts.putIfAbsent(row.id(), row);
            items.computeIfAbsent(row.id(), id -> new ArrayList<>()).addAll(row.items());
        }
        return firsts.values().stream()
                .map(first -> first.with(items.get(first.id()), first.result()))
                .toList();
    }
}

package org.riseandgel.progress;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.riseandgel.AppProcess;
import org.riseandgel.Browserless;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;

/**
 * The packaged program with the demo school and, loaded by SQL, cohorts of 40 people who each gave 80 answers in each of the 16
 * skills. The standings are counted from the answers.
 */
final class LoadedSchool implements AutoCloseable {
    static final int PEOPLE_OF_A_COHORT = 40;
    static final int SKILLS = 16;

    /** Of the first cohort, which the demo instructor teaches. */
    static final String COHORT = "00000000-0000-4000-a000-000000000001";

    private static final int ANSWERS_OF_A_PERSON = SKILLS * 80;

    private static final String BOARD =
            """
            SELECT p.id, p.display_name, s.* FROM cohort_member m JOIN person p ON p.id = m.person_id
            LEFT JOIN skill_standing s ON s.person_id = p.id
            WHERE m.cohort_id = '%s' AND m.part = 'learns' AND m.left_at IS NULL
            ORDER BY lower(p.display_name), s.skill""".formatted(COHORT);

    private final Path folder;
    private final int people;
    private AppProcess app;
    private Connection connection;
    private Browserless instructor;

    LoadedSchool(Path folder, int answers) throws IOException, SQLException {
        this.folder = Files.createDirectories(folder);
        this.people = answers / ANSWERS_OF_A_PERSON / PEOPLE_OF_A_COHORT * PEOPLE_OF_A_COHORT;
        start();
        load();
    }

    int answers() {
        return people * ANSWERS_OF_A_PERSON;
    }

    /** The board's page, as the instructor's browser gets it. */
    Browserless.Answer board() {
        return instructor.get("/cohorts/" + COHORT);
    }

    /** The yardstick: who is in the cohort and all their standings, read to the last row and column. */
    int bareSql() throws SQLException {
        int columns = 0;
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(BOARD)) {
            while (rows.next()) {
                for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                    columns += rows.getString(i) == null ? 0 : 1;
                }
            }
        }
        return columns;
    }

    /** The plans of all statements of one board, as the server has carried them out. */
    List<String> plans() throws IOException, SQLException {
        run(
                "ALTER ROLE riseandgel_app SET session_preload_libraries = 'auto_explain'",
                "ALTER ROLE riseandgel_app SET auto_explain.log_min_duration = 0",
                "ALTER ROLE riseandgel_app SET auto_explain.log_analyze = on",
                "ALTER ROLE riseandgel_app SET auto_explain.log_buffers = on");
        connection.close();
        app.stop();
        start();
        for (int i = 0; i < 5; i++) {
            board();
        }
        int before = log().length();
        board();
        List<String> plans = new ArrayList<>();
        for (String entry : log().substring(before).split("(?m)(?=^\\d{4}-\\d\\d-\\d\\d )")) {
            if (entry.contains("Query Text:") && !entry.contains("sign_in ")) {
                plans.add(entry.strip());
            }
        }
        return plans;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
        app.stop();
        app.close();
    }

    private void start() throws IOException, SQLException {
        app = AppProcess.start(folder.resolve("data"), Map.of("RISEANDGEL_DEMO", "true"));
        connection = connect();
        instructor = Browserless.at(app.url());
        DemoPeople.ALL.stream()
                .filter(person -> person.role().equals(Roles.INSTRUCTOR))
                .findFirst()
                .ifPresent(person -> instructor.signIn(person.signInName(), person.password()));
    }

    private Connection connect() throws IOException, SQLException {
        Path data = folder.resolve("data");
        String port = Files.readAllLines(data.resolve("database").resolve("postmaster.pid"))
                .get(3)
                .strip();
        String password = Files.readString(data.resolve("keys").resolve("postgres.password"))
                .strip();
        return DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + port + "/riseandgel", "riseandgel_admin", password);
    }

    private String log() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(folder.resolve("data"))) {
            for (Path file : files.filter(path -> path.getFileName().toString().matches("postgres-.*\\.log"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    private void load() throws IOException, SQLException {
        String script = Files.readString(Path.of("src", "bench", "resources", "board-speed.sql"));
        run(script.replace(":people", Integer.toString(people))
                .replace(":instructor", "'" + DemoPeople.INSTRUCTOR + "'")
                .split(";\\s*\n"));
    }

    private void run(String... statements) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                if (!sql.isBlank()) {
                    statement.execute(sql);
                }
            }
        }
    }
}

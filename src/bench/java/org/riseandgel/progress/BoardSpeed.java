package org.riseandgel.progress;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.riseandgel.Browserless;

/**
 * A cohort's board of 40 people by 16 skills over HTTP, at some 50 thousand and at some 5 million stored answers, beside the bare
 * SQL for it; taken in turns, so that all four meet the same moments. Needs the packaged program; makes its data in a temporary
 * folder and removes it.
 */
public final class BoardSpeed {
    private static final int FEW = 51_200;
    private static final int MANY = 5_120_000;
    private static final int WARM_UP = 400;
    private static final int ROUNDS = 20;
    private static final int OF_A_ROUND = 25;

    private enum What {
        BOARD_FEW,
        BOARD_MANY,
        SQL_FEW,
        SQL_MANY
    }

    private BoardSpeed() {}

    public static void main(String[] arguments) throws Exception {
        int many = Integer.getInteger("board.answers", MANY);
        Path folder = Files.createTempDirectory("board-speed");
        try (LoadedSchool small = new LoadedSchool(folder.resolve("few"), FEW);
                LoadedSchool large = new LoadedSchool(folder.resolve("many"), many)) {
            check(small);
            check(large);
            Map<What, Callable<?>> work = new EnumMap<>(What.class);
            work.put(What.BOARD_FEW, small::board);
            work.put(What.BOARD_MANY, large::board);
            work.put(What.SQL_FEW, small::bareSql);
            work.put(What.SQL_MANY, large::bareSql);
            measure(work, WARM_UP / OF_A_ROUND);
            print(measure(work, ROUNDS), small, large);
            List<String> plans = large.plans();
            System.out.printf("%n%d statements of one board%n", plans.size());
            plans.forEach(System.out::println);
        } finally {
            remove(folder);
        }
    }

    /** Counts only if the page is whole. */
    private static void check(LoadedSchool school) {
        Browserless.Answer answer = school.board();
        int cells = answer.page().select("table.board tbody .state").size();
        if (answer.status() != 200 || cells != LoadedSchool.PEOPLE_OF_A_COHORT * LoadedSchool.SKILLS) {
            throw new IllegalStateException("Not the board: " + answer.status() + ", " + cells + " cells");
        }
        System.out.printf(
                "%,d answers: a page of %,d characters%n",
                school.answers(), answer.body().length());
    }

    private static Map<What, List<Double>> measure(Map<What, Callable<?>> work, int rounds) throws Exception {
        Map<What, List<Double>> taken = new EnumMap<>(What.class);
        for (int round = 0; round < rounds; round++) {
            for (Map.Entry<What, Callable<?>> one : work.entrySet()) {
                List<Double> times = taken.computeIfAbsent(one.getKey(), what -> new ArrayList<>());
                for (int i = 0; i < OF_A_ROUND; i++) {
                    long start = System.nanoTime();
                    one.getValue().call();
                    times.add((System.nanoTime() - start) / 1e6);
                }
            }
        }
        taken.values().forEach(Collections::sort);
        return taken;
    }

    private static void print(Map<What, List<Double>> taken, LoadedSchool small, LoadedSchool large) {
        taken.forEach((what, times) -> System.out.printf(
                Locale.ROOT,
                "%-10s least %.2f ms, median %.2f ms, 90 %% %.2f ms, 99 %% %.2f ms of %d%n",
                what,
                times.get(0),
                at(times, 0.5),
                at(times, 0.9),
                at(times, 0.99),
                times.size()));
        System.out.printf(
                Locale.ROOT,
                "%,d answers against %,d: medians %.2f, least %.2f%n",
                large.answers(),
                small.answers(),
                at(taken.get(What.BOARD_MANY), 0.5) / at(taken.get(What.BOARD_FEW), 0.5),
                taken.get(What.BOARD_MANY).get(0) / taken.get(What.BOARD_FEW).get(0));
        System.out.printf(
                Locale.ROOT,
                "board against bare SQL at %,d: median %.2f, 99 %% against the median %.2f%n",
                large.answers(),
                at(taken.get(What.BOARD_MANY), 0.5) / at(taken.get(What.SQL_MANY), 0.5),
                at(taken.get(What.BOARD_MANY), 0.99) / at(taken.get(What.SQL_MANY), 0.5));
    }

    private static double at(List<Double> sorted, double part) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(part * sorted.size())));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (java.io.UncheckedIOException e) {
            System.err.println("Left behind: " + folder + ": " + e.getMessage());
        }
    }
}

package org.riseandgel.speed;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.Graded;
import org.riseandgel.exercise.Grader;
import org.riseandgel.exercise.SourceFile;

/**
 * Grading one typed answer, from text to verdict, beside the calculation it is about: the mark on the stick of a tapered
 * cup, a bundled exercise.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.SampleTime, Mode.AverageTime})
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class GradingSpeed {
    private static final String FILE = "exercises/stick-marks-tapered/stick-marks-tapered-cup.yaml";
    private static final Calculation STICK =
            Catalogue.standard().find("stick-marks").orElseThrow();

    private final NumberReader reader = NumberReader.of(DecimalMark.POINT);
    private final Catalogue catalogue = Catalogue.standard();
    private ExerciseLibrary library;
    private DrawnNumbers drawn;
    private Given given;

    /** What is graded. */
    @State(Scope.Benchmark)
    public static class Answer {
        @Param({"right", "slip", "wrong"})
        public String kind;

        private String typed;

        @Setup
        public void write(GradingSpeed grading) {
            Rational expected = grading.drawn.part(0).expected();
            Rational value =
                    switch (kind) {
                        case "right" -> expected;
                        case "slip" -> grading.drawn
                                .part(0)
                                .wrongAnswers()
                                .get(0)
                                .band()
                                .centre();
                        default -> expected.times(Rational.of(37, 10));
                    };
            typed = value.toDecimal(2).toPlainString() + " mm";
        }
    }

    @Setup
    public void draw() throws IOException {
        try (InputStream in = GradingSpeed.class.getResourceAsStream("/content/" + FILE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            library = ExerciseLibrary.load(
                            List.of(new SourceFile(FILE, text)), Catalogue.standard(), Set.of("stick-marks-tapered"))
                    .library();
        }
        drawn = (DrawnNumbers) library.drawer().draw(library.all().get(0), 20_260_731L);
        given = Given.defaultsOf(STICK)
                .choosing("shape", "tapered")
                .with("bottomDiameter", drawn("floor"))
                .with("topDiameter", drawn("rim"))
                .with("depth", drawn("depth"))
                .with("charge", drawn("charge"))
                .with("ratio", drawn("ratio"));
    }

    private Quantity drawn(String name) {
        return drawn.values().get(name).quantity();
    }

    /** The yardstick: the same steps in the same order, with nothing written down and no slip looked for. */
    @Benchmark
    public double bareCalculation() {
        Silent work = new Silent();
        STICK.work(given, work);
        return work.last();
    }

    /** The calculation with its working, its slips, and the run that rounds early. */
    @Benchmark
    public Outcome calculationWithSlips() {
        return catalogue.run(STICK, given);
    }

    /** Reading the typed text and judging it. */
    @Benchmark
    public Graded gradeOneAnswer(Answer answer) {
        Reading reading = reader.read(answer.typed);
        Optional<String> question = Grader.check(drawn, 0, reading);
        if (question.isPresent()) {
            throw new IllegalStateException(question.get());
        }
        return Grader.grade(drawn, 0, reading);
    }

    /** Making the draw from its seed once more, as a server does that keeps no draw. */
    @Benchmark
    public DrawnExercise drawAgain() {
        return library.drawer().again(drawn.template(), drawn.seed());
    }
}

package org.riseandgel.exercise;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Reading;

/** A few exercises that are used by tests only, one of each sort. */
final class Samples {
    static final Set<String> SKILLS = Set.of("sticks", "foam", "weighing", "heat");
    static final String BEAKER = "sticks/straight-beaker";
    static final String CUP = "foam/one-cup";
    static final String CARD = "weighing/old-card";
    static final String JOB = "weighing/whole-job";
    static final String OVEN = "heat/oven-dial";
    static final List<String> ALL = List.of(BEAKER, CUP, CARD, JOB, OVEN);
    static final ExerciseLibrary LIBRARY = library();

    private Samples() {}

    static Stream<String> ids() {
        return ALL.stream().map(path -> path.substring(path.indexOf('/') + 1));
    }

    static NumericTemplate template(String path) {
        return (NumericTemplate)
                LIBRARY.find(path.substring(path.indexOf('/') + 1)).orElseThrow();
    }

    static DrawnNumbers draw(String path, long seed) {
        return LIBRARY.drawer().draw(template(path), seed);
    }

    static Reading read(String typed) {
        return NumberReader.of(DecimalMark.POINT).read(typed);
    }

    static SourceFile file(String path) {
        String whole = "exercises/" + path + ".yaml";
        try (InputStream in = Samples.class.getResourceAsStream("/" + whole)) {
            return new SourceFile(whole, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static ExerciseLibrary library() {
        List<SourceFile> files = ALL.stream().map(Samples::file).toList();
        ExerciseLibrary.Loaded loaded = ExerciseLibrary.load(files, Catalogue.standard(), SKILLS);
        if (!loaded.problems().isEmpty()) {
            throw new BrokenContentException(loaded.problems());
        }
        return loaded.library();
    }
}

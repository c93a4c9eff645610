package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.riseandgel.bench.Catalogue;

/** All exercises of the course, and the way back from a stored version to its exercise. */
public final class ExerciseLibrary {
    private final Catalogue catalogue;
    private final Drawer drawer;
    private final Map<String, ExerciseTemplate> byId;

    private ExerciseLibrary(Catalogue catalogue, Map<String, ExerciseTemplate> byId) {
        this.catalogue = catalogue;
        this.drawer = new Drawer(catalogue);
        this.byId = byId;
    }

    /** What loading gave: the exercises that are good, and everything that is wrong with the others. */
    public record Loaded(ExerciseLibrary library, List<ContentProblem> problems) {
        public Loaded {
            problems = List.copyOf(problems);
        }
    }

    /** Reads and checks exercise files and their figures, for a course without objectives. */
    public static Loaded load(List<SourceFile> files, Catalogue catalogue, Set<String> skills) {
        return load(files, catalogue, skills, Set.of());
    }

    /** Reads and checks exercise files and their figures; what has a problem is left out and its problems are told. */
    public static Loaded load(List<SourceFile> files, Catalogue catalogue, Set<String> skills, Set<String> objectives) {
        TemplateLoader loader = new TemplateLoader(catalogue, skills, objectives);
        Map<String, ExerciseTemplate> byId = new LinkedHashMap<>();
        List<ContentProblem> all = new ArrayList<>();
        Map<String, FigureShelf> figures = FigureShelf.byFolder(files, all);
        for (SourceFile file : files) {
            if (!FigureShelf.isFigure(file)) {
                Problems problems = new Problems(file.path());
                FigureShelf beside = figures.getOrDefault(file.folder(), FigureShelf.EMPTY);
                loader.load(file, beside, problems).ifPresent(template -> keep(template, byId, problems));
                all.addAll(problems.found());
            }
        }
        return new Loaded(new ExerciseLibrary(catalogue, byId), all);
    }

    private static void keep(ExerciseTemplate template, Map<String, ExerciseTemplate> byId, Problems problems) {
        ExerciseTemplate twin = byId.putIfAbsent(template.id(), template);
        if (twin != null) {
            problems.add(
                    1,
                    "id",
                    "“%s” is already the id of %s."
                            .formatted(twin.id(), twin.file().path()));
        }
    }

    /**
     * The exercise that a stored text stands for; it need not be in the library any more.
     *
     * @throws BrokenContentException when the text is no exercise, which a stored version never is
     */
    public ExerciseTemplate parse(String path, String text) {
        Problems problems = new Problems(path);
        KeptText kept = KeptText.split(text);
        return TemplateLoader.ofStored(catalogue)
                .load(new SourceFile(path, kept.file()), FigureShelf.of(kept, problems), problems)
                .orElseThrow(() -> new BrokenContentException(problems.found()));
    }

    /** Draws fresh numbers, or the numbers of a stored seed. */
    public Drawer drawer() {
        return drawer;
    }

    /** All exercises, in the order in which they were loaded. */
    public List<ExerciseTemplate> all() {
        return List.copyOf(byId.values());
    }

    /** The exercise of that id. */
    public Optional<ExerciseTemplate> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The exercises of a skill to draw from: what is done at the bench with the salt is begun on purpose, or not at all. */
    public List<ExerciseTemplate> ofSkill(String skill) {
        return all(skill).filter(one -> one.atBench().isEmpty()).toList();
    }

    /** The exercises of a skill that are done at the bench with the salt itself. */
    public List<ExerciseTemplate> atBench(String skill) {
        return all(skill).filter(one -> one.atBench().isPresent()).toList();
    }

    private Stream<ExerciseTemplate> all(String skill) {
        return byId.values().stream().filter(one -> one.skill().equals(skill));
    }

    /** The exercises of a skill at a level. */
    public List<ExerciseTemplate> ofSkill(String skill, int level) {
        return ofSkill(skill).stream().filter(one -> one.level() == level).toList();
    }
}

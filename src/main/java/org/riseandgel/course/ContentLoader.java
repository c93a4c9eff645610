package org.riseandgel.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.Figure;
import org.riseandgel.exercise.FigureReader;
import org.riseandgel.exercise.Problems;
import org.riseandgel.exercise.SourceFile;
import org.riseandgel.platform.content.ContentFault;
import org.riseandgel.platform.content.ContentFile;
import org.riseandgel.platform.content.ContentFiles;

/** Makes the course out of its files and finds everything that is wrong with them, all in one go. */
final class ContentLoader {
    private static final Pattern LESSON_FILE = Pattern.compile("lessons/([^/]+)/([^/]+)\\.md");
    private static final Pattern FIGURE_FILE = Pattern.compile("lessons/([^/]+)/([^/]+\\.svg)");
    private static final String EXERCISES = "exercises/";

    private final ContentFiles files;
    private final Catalogue catalogue;
    private final List<Problems> reports = new ArrayList<>();
    private final Map<String, Map<String, Figure>> figures = new HashMap<>();
    private final Map<String, Set<String>> brokenFigures = new HashMap<>();

    private ContentLoader(ContentFiles files, Catalogue catalogue) {
        this.files = files;
        this.catalogue = catalogue;
    }

    /** What was made of the files, and what is wrong with them; with problems, the content is not to be used. */
    record Loaded(Content content, List<ContentProblem> problems) {}

    static Loaded load(ContentFiles files, Catalogue catalogue) {
        return new ContentLoader(files, catalogue).load();
    }

    private Loaded load() {
        for (ContentFault fault : files.faults()) {
            report(fault.path()).add(1, "file", fault.message());
        }
        Course course = course();
        readFigures();
        Map<LessonKey, LessonReader.Draft> drafts = drafts(course);
        Map<LessonKey, Lesson> lessons = inOrder(course, drafts);
        LinkCheck links = new LinkCheck(course, catalogue, lessons);
        drafts.values()
                .forEach(draft -> draft.links().forEach(use -> links.check(use, draft.lesson(), draft.problems())));
        Glossary glossary = glossary(lessons);
        lessons.values().forEach(lesson -> lesson.body().explain(glossary));
        ExerciseLibrary.Loaded exercises = exercises(course);
        List<Check> checks = checks(course, exercises.library());
        Content content = new Content(
                course, lessons, exercises.library(), checks, simulations(course), glossary, LessonSearch.of(lessons));
        return new Loaded(content, problems(exercises.problems()));
    }

    private Course course() {
        Problems problems = report(CourseParser.FILE);
        Optional<ContentFile> file = files.files().stream()
                .filter(one -> one.path().equals(CourseParser.FILE))
                .findFirst();
        if (file.isEmpty()) {
            problems.add(1, "file", "is missing; it names the stages, their lessons and the skills");
            return Course.EMPTY;
        }
        return CourseParser.parse(file.get().text(), written(), problems);
    }

    /** A course may do without a glossary. */
    private Glossary glossary(Map<LessonKey, Lesson> lessons) {
        return files.files().stream()
                .filter(one -> one.path().equals(GlossaryReader.FILE))
                .findFirst()
                .map(file -> GlossaryReader.read(file.text(), lessons, report(file.path())))
                .orElse(Glossary.EMPTY);
    }

    private Set<LessonKey> written() {
        Set<LessonKey> written = new HashSet<>();
        for (ContentFile file : files.files()) {
            Matcher name = LESSON_FILE.matcher(file.path());
            if (name.matches()) {
                written.add(new LessonKey(name.group(1), name.group(2)));
            }
        }
        return written;
    }

    private void readFigures() {
        for (ContentFile file : files.files()) {
            Matcher name = FIGURE_FILE.matcher(file.path());
            if (name.matches()) {
                FigureReader.read(file.path(), file.text(), report(file.path()))
                        .ifPresentOrElse(
                                figure -> figures.computeIfAbsent(name.group(1), stage -> new HashMap<>())
                                        .put(name.group(2), figure),
                                () -> brokenFigures
                                        .computeIfAbsent(name.group(1), stage -> new HashSet<>())
                                        .add(name.group(2)));
            }
        }
    }

    private Map<LessonKey, LessonReader.Draft> drafts(Course course) {
        CourseNames names = CourseNames.of(course);
        Map<LessonKey, LessonReader.Draft> drafts = new HashMap<>();
        for (ContentFile file : files.files()) {
            Matcher name = LESSON_FILE.matcher(file.path());
            if (name.matches()) {
                LessonKey key = new LessonKey(name.group(1), name.group(2));
                Problems problems = report(file.path());
                checkListed(course, key, problems);
                LessonReader.read(key, file.text(), names, figuresOf(key.stage()), catalogue, problems)
                        .ifPresent(draft -> drafts.put(key, draft));
            } else if (file.path().endsWith(".md")) {
                report(file.path()).add(1, "file", "is not in the folder of a stage; put it in lessons/<stage>/");
            }
        }
        return drafts;
    }

    private static void checkListed(Course course, LessonKey key, Problems problems) {
        Optional<Stage> stage = course.stage(key.stage());
        if (stage.isEmpty()) {
            problems.add(1, "file", "lies in a folder that is no stage of course.yaml; name the folder as the stage");
        } else if (!stage.get().lessons().contains(key.lesson())) {
            problems.add(
                    1,
                    "file",
                    "is not in the list of its stage; add “%s” to the lessons of %s in course.yaml"
                            .formatted(key.lesson(), key.stage()));
        }
    }

    private BodyReader.FiguresOfStage figuresOf(String stage) {
        return new BodyReader.FiguresOfStage(
                figures.getOrDefault(stage, Map.of()), brokenFigures.getOrDefault(stage, Set.of()));
    }

    private static Map<LessonKey, Lesson> inOrder(Course course, Map<LessonKey, LessonReader.Draft> drafts) {
        Map<LessonKey, Lesson> lessons = new LinkedHashMap<>();
        for (Stage stage : course.stages()) {
            for (String name : stage.lessons()) {
                LessonKey key = new LessonKey(stage.id(), name);
                if (drafts.containsKey(key)) {
                    lessons.put(key, drafts.get(key).lesson());
                }
            }
        }
        return lessons;
    }

    private ExerciseLibrary.Loaded exercises(Course course) {
        List<SourceFile> sources = files.files().stream()
                .filter(file -> file.path().startsWith(EXERCISES))
                .map(file -> new SourceFile(file.path(), file.text()))
                .toList();
        CourseNames names = CourseNames.of(course);
        return ExerciseLibrary.load(
                sources, catalogue, new HashSet<>(names.skills()), new HashSet<>(names.objectives()));
    }

    /** A course may have no checks. */
    private List<Check> checks(Course course, ExerciseLibrary library) {
        List<String> skills = course.skills().stream().map(Skill::id).toList();
        return files.files().stream()
                .filter(file -> file.path().equals(ChecksParser.FILE))
                .findFirst()
                .map(file -> ChecksParser.parse(file.text(), skills, library, report(file.path())))
                .orElse(List.of());
    }

    /** A course may have no simulations. */
    private List<Simulation> simulations(Course course) {
        List<String> skills = course.skills().stream().map(Skill::id).toList();
        Set<String> seen = new HashSet<>();
        return files.files().stream()
                .filter(file -> SimulationsParser.reads(file.path()))
                .sorted(Comparator.comparing(ContentFile::path))
                .flatMap(file -> SimulationsParser.parse(file.text(), skills, seen, report(file.path())).stream())
                .toList();
    }

    private Problems report(String file) {
        Problems problems = new Problems(file);
        reports.add(problems);
        return problems;
    }

    private List<ContentProblem> problems(List<ContentProblem> ofExercises) {
        List<ContentProblem> all = new ArrayList<>();
        reports.forEach(report -> report.found().forEach(problem -> all.add(asSentence(problem))));
        all.addAll(ofExercises);
        all.sort(Comparator.comparing(ContentProblem::file).thenComparingInt(ContentProblem::line));
        return List.copyOf(all);
    }

    /** The message with a capital and a full stop, as it is read on a page or in the log. */
    private static ContentProblem asSentence(ContentProblem problem) {
        String words = problem.message();
        String begun = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        String ended = begun.endsWith(".") || begun.endsWith("?") ? begun : begun + ".";
        return new ContentProblem(problem.file(), problem.line(), problem.field(), ended);
    }
}

package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads what every kind of exercise has. */
final class HeadReader {
    static final int LONGEST_LINE = 400;
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int LONGEST_ID = 60;
    private static final int LONGEST_TITLE = 80;
    private static final int LONGEST_STORY = 1_500;
    private static final int MOST_HINTS = 5;
    private static final int MOST_OBJECTIVES = 10;

    private final Optional<Set<String>> skills;
    private final Set<String> objectives;

    /** Skills are checked if there are any to check against; so are objectives then. */
    HeadReader(Optional<Set<String>> skills, Set<String> objectives) {
        this.skills = skills;
        this.objectives = objectives;
    }

    /** The head of a file; where something is wrong, an empty text or the lowest level stands in for it. */
    ExerciseTemplate.Head read(SourceFile file, Fields root) {
        return new ExerciseTemplate.Head(
                file,
                Version.of(file.text()),
                id(root, file),
                line(root, "title", LONGEST_TITLE),
                skill(root, file),
                root.need("level").flatMap(field -> field.whole(1, 3)).orElse(1),
                root.find("critical").flatMap(Field::flag).orElse(false),
                objectives(root),
                root.find("at-the-bench").flatMap(BenchWork::read),
                line(root, "story", LONGEST_STORY),
                hints(root),
                line(root, "source", LONGEST_LINE));
    }

    /** The kind; empty, and told, when there is none or it is unknown. */
    static Optional<ExerciseKind> kind(Fields root) {
        return root.need("kind").flatMap(field -> field.text(LONGEST_ID).flatMap(id -> {
            Optional<ExerciseKind> kind = ExerciseKind.byId(id);
            if (kind.isEmpty()) {
                field.problem("Is “%s”; the kinds are %s.".formatted(id, ExerciseKind.names()));
            }
            return kind;
        }));
    }

    private static String line(Fields root, String name, int longest) {
        return root.need(name).flatMap(field -> field.text(longest)).orElse("");
    }

    private static String id(Fields root, SourceFile file) {
        Optional<Field> field = root.need("id");
        String id = field.flatMap(f -> f.text(LONGEST_ID)).orElse("");
        if (id.isEmpty()) {
            return id;
        }
        if (!ID.matcher(id).matches()) {
            field.get().problem("Is “%s”; write small letters, digits and single hyphens.".formatted(id));
        } else if (!file.name().equals(id + ".yaml")) {
            field.get().problem("Is “%s”, but the file is %s; they must agree.".formatted(id, file.name()));
        }
        return id;
    }

    private String skill(Fields root, SourceFile file) {
        Optional<Field> field = root.need("skill");
        String skill = field.flatMap(f -> f.text(LONGEST_ID)).orElse("");
        if (skill.isEmpty()) {
            return skill;
        }
        if (skills.isPresent() && !skills.get().contains(skill)) {
            field.get()
                    .problem("“%s” is no skill of the course; the skills are %s."
                            .formatted(
                                    skill,
                                    String.join(
                                            ", ", skills.get().stream().sorted().toList())));
        } else if (!file.folder().equals(skill)) {
            field.get()
                    .problem("Is “%s”, but the file is in the folder %s; they must agree."
                            .formatted(skill, file.folder()));
        }
        return skill;
    }

    private List<String> objectives(Fields root) {
        return root.find("objectives").map(field -> field.list(MOST_OBJECTIVES)).orElse(List.of()).stream()
                .map(this::objective)
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<String> objective(Field field) {
        Optional<String> id = field.text(LONGEST_ID);
        id.filter(one -> skills.isPresent() && !objectives.contains(one))
                .ifPresent(one -> field.problem("“%s” is no objective of the course; the objectives are %s."
                        .formatted(one, Known.words(objectives.stream().sorted().toList()))));
        return id;
    }

    private static List<String> hints(Fields root) {
        return root.find("hints").map(field -> field.list(MOST_HINTS)).orElse(List.of()).stream()
                .map(field -> field.text(LONGEST_LINE))
                .flatMap(Optional::stream)
                .toList();
    }
}

package org.riseandgel.progress;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.course.Stage;
import org.riseandgel.practice.Held;
import org.riseandgel.practice.SkillState;
import org.riseandgel.practice.StandingView;
import org.riseandgel.practice.Standings;
import org.riseandgel.practice.ToDo;

/** Boards of cohorts, read from people and standings alone; the answers are never counted through. */
@ApplicationScoped
public class Boards {
    /** From so many days on somebody should ask after a skill that waits: judgement, no source. */
    private static final int LONG_OVERDUE = 7;

    private final People people;
    private final CourseContent content;
    private final Standings standings;
    private final WordsGiven given;

    Boards(People people, CourseContent content, Standings standings, WordsGiven given) {
        this.people = people;
        this.content = content;
        this.standings = standings;
        this.given = given;
    }

    /** Who asks: the office sees every cohort, an instructor those that they teach now. */
    public record Asker(UUID person, boolean office) {}

    /** People by skills. */
    public record Board(CohortView cohort, List<StageColumns> stages, List<PersonRow> rows, List<Word> words) {
        /** The same with the skills of one stage alone; with all when no stage has that number. */
        public Board ofStage(int number) {
            int from = 0;
            for (StageColumns stage : stages) {
                int first = from;
                int end = first + stage.skills().size();
                if (stage.number() == number) {
                    return new Board(
                            cohort,
                            List.of(stage),
                            rows.stream().map(row -> row.only(first, end)).toList(),
                            words.stream()
                                    .filter(word -> stage.has(word.skill()))
                                    .toList());
                }
                from = end;
            }
            return this;
        }

        /** The same with the people alone who need a word. */
        public Board ofWords() {
            return new Board(
                    cohort,
                    stages,
                    rows.stream()
                            .filter(row -> words.stream()
                                    .anyMatch(word -> word.person().equals(row.id())))
                            .toList(),
                    words);
        }

        /** All skills in the order of the columns. */
        public List<Skill> skills() {
            return stages.stream().flatMap(stage -> stage.skills().stream()).toList();
        }
    }

    /** The skills of a stage that have exercises. */
    public record StageColumns(int number, String title, List<Skill> skills) {
        boolean has(String skill) {
            return skills.stream().anyMatch(one -> one.id().equals(skill));
        }
    }

    /** One person's standings in the order of the columns. */
    public record PersonRow(UUID id, String name, String signInName, List<StandingView> cells, Instant lastAt) {
        PersonRow only(int from, int end) {
            return new PersonRow(id, name, signInName, cells.subList(from, end), lastAt);
        }
    }

    /** Somebody who needs a word about a skill, and why. */
    public record Word(UUID person, String name, String skill, String skillTitle, String why, Instant lastAt) {}

    /** The cohorts that may be seen. */
    public List<CohortView> cohorts(Asker asker) {
        return asker.office() ? people.allCohorts() : people.cohortsTaughtBy(asker.person());
    }

    /** The board of a cohort; empty when it may not be seen. At most three statements, however many people and skills. */
    public Optional<Board> board(Asker asker, UUID cohort) {
        return people.learnersSeenBy(asker.person(), asker.office(), cohort).map(this::board);
    }

    private Board board(People.CohortLearners cohort) {
        List<People.Learner> learners = cohort.learners();
        Map<UUID, Map<String, StandingView>> all =
                standings.of(learners.stream().map(People.Learner::id).toList());
        List<StageColumns> stages = columns(content.current());
        List<Skill> skills =
                stages.stream().flatMap(stage -> stage.skills().stream()).toList();
        List<PersonRow> rows = learners.stream()
                .map(learner -> row(learner, skills, all.getOrDefault(learner.id(), Map.of())))
                .toList();
        return new Board(cohort.cohort(), stages, rows, notGiven(words(rows, skills, standings.today())));
    }

    /** The words a person needs now; of a person who may be seen. */
    List<Word> words(PersonView learner) {
        Map<String, StandingView> own = standings.of(List.of(learner.id())).getOrDefault(learner.id(), Map.of());
        List<Skill> skills = columns(content.current()).stream()
                .flatMap(stage -> stage.skills().stream())
                .toList();
        People.Learner one = new People.Learner(learner.id(), learner.displayName(), learner.signInName());
        return notGiven(words(List.of(row(one, skills, own)), skills, standings.today()));
    }

    /** A word that was given since the answer it is about is not needed any more. */
    private List<Word> notGiven(List<Word> words) {
        if (words.isEmpty()) {
            return words;
        }
        List<WordsGiven.Given> latest =
                given.latest(words.stream().map(Word::person).distinct().toList());
        return words.stream()
                .filter(word -> latest.stream()
                        .noneMatch(one -> one.person().equals(word.person())
                                && one.skill().equals(word.skill())
                                && !one.at().isBefore(word.lastAt())))
                .toList();
    }

    private static List<StageColumns> columns(Content now) {
        return now.course().stages().stream()
                .map(stage -> new StageColumns(stage.number(), stage.title(), skills(now, stage)))
                .filter(stage -> !stage.skills().isEmpty())
                .toList();
    }

    private static List<Skill> skills(Content now, Stage stage) {
        return now.course().skills().stream()
                .filter(skill -> skill.stage().equals(stage.id()))
                .filter(skill -> !now.exercises().ofSkill(skill.id()).isEmpty())
                .toList();
    }

    private static PersonRow row(People.Learner learner, List<Skill> skills, Map<String, StandingView> standings) {
        List<StandingView> cells = skills.stream()
                .map(skill -> standings.getOrDefault(skill.id(), StandingView.none(skill.id())))
                .toList();
        Instant last = standings.values().stream()
                .map(StandingView::lastAt)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
        return new PersonRow(learner.id(), learner.displayName(), learner.signInName(), cells, last);
    }

    private static List<Word> words(List<PersonRow> rows, List<Skill> skills, LocalDate today) {
        return rows.stream()
                .flatMap(row -> words(row, skills, today))
                .sorted(Comparator.comparing(Word::lastAt).reversed())
                .toList();
    }

    private static Stream<Word> words(PersonRow row, List<Skill> skills, LocalDate today) {
        return row.cells().stream().filter(cell -> cell.answers() > 0).flatMap(cell -> {
            List<String> why = why(cell, today);
            return why.isEmpty() ? Stream.empty() : Stream.of(word(row, skills, cell, why));
        });
    }

    private static Word word(PersonRow row, List<Skill> skills, StandingView cell, List<String> why) {
        return new Word(
                row.id(), row.name(), cell.skill(), title(skills, cell.skill()), String.join(", ", why), cell.lastAt());
    }

    private static List<String> why(StandingView cell, LocalDate today) {
        List<String> why = new ArrayList<>();
        if (cell.state() == SkillState.STUCK) {
            why.add(cell.wrongInRow() + " wrong in a row");
        }
        if (cell.toDo().stream().anyMatch(toDo -> toDo.held() == Held.WRONG)) {
            why.add("an exercise wrong three times");
        }
        if (cell.toDo().stream().anyMatch(toDo -> toDo.held() == Held.FAST)) {
            why.add("answers too fast to have been worked out");
        }
        if (cell.toDo().stream().anyMatch(ToDo::isSureWrong)) {
            why.add("sure and wrong");
        }
        long overdue = cell.returns().daysOverdue(today);
        if (overdue >= LONG_OVERDUE) {
            why.add("due for " + overdue + " days");
        }
        return why;
    }

    private static String title(List<Skill> skills, String id) {
        return skills.stream()
                .filter(skill -> skill.id().equals(id))
                .map(Skill::title)
                .findFirst()
                .orElse(id);
    }
}

package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.ShrinkingMode;

/** The rule against a second reading of its page, over histories that nobody thought of. */
class SecondOpinionTest {
    @Property(
            tries = 10_000,
            seed = "20270304",
            edgeCases = EdgeCasesMode.NONE,
            generation = GenerationMode.RANDOMIZED,
            shrinking = ShrinkingMode.BOUNDED)
    void neverClearedWhereASecondReadingSaysNot(
            @ForAll("beginnings") long beginning, @ForAll("moves") List<Long> moves) {
        MadeUpHistory made = new MadeUpHistory(beginning, moves);
        Question question = made.question();
        Instant at = made.when();
        Instant known = made.known(at);
        SecondOpinion second = new SecondOpinion(made.events, known, made.zone, made.born);
        Standing standing = new ClearanceRule(made.history().knownAt(known)).standing(question, at);
        SecondOpinion.Opinion opinion = second.ask(question, at);
        if (standing.status() != opinion.status() || !standing.reasons().equals(List.copyOf(opinion.reasons())))
            made.events.forEach(System.err::println);
        System.err.println(question + " " + at + " " + known);
        System.err.println(standing.status() + " " + standing.firstReason() + " " + standing.reasons() + " vs "
                + opinion
                + (standing.status() == opinion.status() && standing.reasons().equals(List.copyOf(opinion.reasons()))
                        ? ""
                        : " DIFF"));
    }

    @Provide
    Arbitrary<Long> beginnings() {
        return Arbitraries.longs().withDistribution(RandomDistribution.uniform());
    }

    @Provide
    Arbitrary<List<Long>> moves() {
        return beginnings().list().ofMinSize(1).ofMaxSize(12);
    }
}

package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MONEY;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Money;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.yield.PieceCost;

/** What a good piece costs when some are scrap, and how many to make for an order. */
public final class CostPiece implements Calculation {
    static final String MADE = "costPerPiece";
    static final String SCRAP = "scrapRate";
    static final String GOOD = "goodPieces";
    static final String GOOD_SHARE = "goodShare";
    static final String COST_PER_GOOD = "costPerGoodPiece";
    static final String TO_MAKE_EXACT = "piecesExact";
    static final String TO_MAKE = "piecesToMake";
    static final String WHOLE_COST = "wholeCost";

    private static final String BY_SCRAP =
            "The scrap rate is the share that is lost: divide by the share of good ones.";

    @Override
    public String id() {
        return "piece-cost";
    }

    @Override
    public String title() {
        return "Cost of a piece";
    }

    @Override
    public String purpose() {
        return "What a good piece costs when some are scrap, and how many to make for an order.";
    }

    @Override
    public Task task() {
        return Task.YIELD;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(
                        MADE,
                        "Material for one piece",
                        "What goes into one piece, good or bad, in your own currency. 12 is only an example.",
                        MONEY,
                        0.01,
                        1_000_000,
                        12.0),
                new Input.Measured(
                        SCRAP,
                        "Scrap rate",
                        "The share of the pieces made that are no good. Count yours; 20 % is only an example.",
                        PERCENT,
                        0,
                        95,
                        20.0),
                new Input.Measured(
                        GOOD, "Good pieces you need", "As many as the order asks for.", ONE, 1, 1_000_000, 40.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(COST_PER_GOOD, "Material for a good piece", MONEY, 0.01),
                new Result(TO_MAKE, "Pieces to make", ONE, 1),
                new Result(WHOLE_COST, "Material for all of them", MONEY, 0.01));
    }

    @Override
    public String inputAt(String what) {
        return what.startsWith("scrap") ? SCRAP : GOOD;
    }

    @Override
    public void work(Given given, Work work) {
        Money made = given.get(MADE, Money.class);
        Concentration scrap = given.get(SCRAP, Concentration.class);
        int good = WholeNumber.of(given, GOOD, "Good pieces");
        Concentration share = work.step(
                GOOD_SHARE,
                "Share of good pieces",
                "100 % − scrap rate",
                "100 % − {}",
                Concentration.ofPercent(100 - scrap.inPercent()),
                PERCENT,
                Work.In.of(scrap, PERCENT));
        work.result(COST_PER_GOOD, costPerGood(made, share, work));
        order(made, share, Ratio.of(good), work);
        costSlips(made, scrap, work);
        orderSlips(made, scrap, good, work);
        work.note("This is the material alone: work, heat and the mold come on top.");
        work.note("How many turn out good is a matter of chance: an order that must not fall short needs a few more.");
    }

    private static Money costPerGood(Money made, Concentration share, Work work) {
        return work.step(
                COST_PER_GOOD,
                "Material for a good piece",
                "cost of a piece ÷ share of good pieces",
                "{} ÷ {}",
                Money.of(PieceCost.ofGood(made.amount(), scrap(share))),
                MONEY,
                Work.In.of(made, MONEY),
                Work.In.of(share, PERCENT));
    }

    private static void order(Money made, Concentration share, Ratio good, Work work) {
        Ratio exact = work.step(
                TO_MAKE_EXACT,
                "Pieces, before rounding up",
                "good pieces ÷ share of good pieces",
                "{} ÷ {}",
                Ratio.of(PieceCost.toMakeExactly(good.asNumber(), scrap(share))),
                ONE,
                Work.In.of(good, ONE),
                Work.In.of(share, PERCENT));
        Ratio toMake = work.step(
                TO_MAKE,
                "Pieces to make",
                "rounded up: nobody makes part of a piece",
                "{}",
                Ratio.of(PieceCost.roundedUp(exact.asNumber())),
                ONE,
                Work.In.of(exact, ONE));
        work.result(TO_MAKE, toMake);
        work.result(
                WHOLE_COST,
                work.step(
                        WHOLE_COST,
                        "Material for all of them",
                        "pieces × cost of a piece",
                        "{} × {}",
                        whole(made, toMake.asNumber()),
                        MONEY,
                        Work.In.of(toMake, ONE),
                        Work.In.of(made, MONEY)));
    }

    private static void costSlips(Money made, Concentration scrap, Work work) {
        double amount = made.amount();
        work.slip(
                Slip.WRONG_WHOLE,
                COST_PER_GOOD,
                () -> Money.of(amount * (1 + scrap.asFraction())),
                "The scrap rate counts on all pieces made: divide by the share of good ones.");
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                COST_PER_GOOD,
                () -> Money.of(amount * (1 - scrap.asFraction())),
                "Scrap makes a good piece dearer: divide by the share of good ones.");
        work.slip(Slip.SCRAP_LEFT_OUT, COST_PER_GOOD, () -> made);
        work.slip(Slip.LOST_FOR_LEFT, COST_PER_GOOD, () -> Money.of(amount / scrap.asFraction()), BY_SCRAP);
    }

    private static void orderSlips(Money made, Concentration scrap, int good, Work work) {
        double added = PieceCost.roundedUp(good * (1 + scrap.asFraction()));
        double multiplied = PieceCost.roundedUp(good * (1 - scrap.asFraction()));
        String line = "The scrap rate counts on all pieces made, not on the good ones.";
        work.slip(Slip.WRONG_WHOLE, TO_MAKE, () -> Ratio.of(added), line);
        work.slip(Slip.WRONG_WHOLE, WHOLE_COST, () -> whole(made, added), line);
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, TO_MAKE, () -> Ratio.of(multiplied));
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, WHOLE_COST, () -> whole(made, multiplied));
        work.slip(Slip.SCRAP_LEFT_OUT, TO_MAKE, () -> Ratio.of(good));
        work.slip(Slip.SCRAP_LEFT_OUT, WHOLE_COST, () -> whole(made, good));
        DoubleSupplier byScrap = () -> PieceCost.roundedUp(good / scrap.asFraction());
        work.slip(Slip.LOST_FOR_LEFT, TO_MAKE, () -> Ratio.of(byScrap.getAsDouble()), BY_SCRAP);
        work.slip(Slip.LOST_FOR_LEFT, WHOLE_COST, () -> whole(made, byScrap.getAsDouble()), BY_SCRAP);
    }

    private static Money whole(Money made, double pieces) {
        return Money.of(made.amount() * pieces);
    }

    private static Concentration scrap(Concentration good) {
        return Concentration.ofPercent(100 - good.inPercent());
    }
}

package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.yield.Shrinkage;

/** From sculpt to piece, from piece to sculpt, or from both to the shrinkage. */
public final class ConvertShrinkage implements Calculation {
    static final String WAY = "way";
    static final String TO_SCULPT = "to-sculpt";
    static final String TO_PIECE = "to-piece";
    static final String MEASURED = "measured";
    static final String SCULPT = "sculpt";
    static final String PIECE = "piece";
    static final String SHRINKAGE = "shrinkage";
    static final String SCULPT_LENGTH = "sculptLength";
    static final String PIECE_LENGTH = "pieceLength";
    static final String SHRINKAGE_SHARE = "shrinkageShare";
    static final String LEFT = "lengthLeft";
    static final String LOST = "lengthLost";
    static final String VOLUME_LEFT = "volumeLeft";

    @Override
    public String id() {
        return "shrinkage";
    }

    @Override
    public String title() {
        return "Shrinkage";
    }

    @Override
    public String purpose() {
        return "How large to sculpt, how large the piece comes out, or how much your foam shrinks.";
    }

    @Override
    public Task task() {
        return Task.YIELD;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Choice(
                        WAY,
                        "Find",
                        "Only what your choice needs is used.",
                        List.of(
                                new Input.Option(TO_SCULPT, "the sculpt that a piece asks for"),
                                new Input.Option(TO_PIECE, "the piece that a sculpt gives"),
                                new Input.Option(MEASURED, "the shrinkage, from both measured"))),
                new Input.Measured(
                        SCULPT,
                        "Length on the sculpt",
                        "Along a line that you can find again.",
                        CENTIMETRE,
                        0.1,
                        500,
                        20.0),
                new Input.Measured(
                        PIECE, "The same length on the dry piece", "Along the same line.", CENTIMETRE, 0.01, 500, 19.2),
                new Input.Measured(
                        SHRINKAGE,
                        "Shrinkage, of the sculpt",
                        "What the dry piece lacks, in percent of the sculpt. Measure your own foam; 4 % is only an example.",
                        PERCENT,
                        0,
                        80,
                        4.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(SCULPT_LENGTH, "Length on the sculpt", CENTIMETRE, 0.1),
                new Result(PIECE_LENGTH, "Length on the dry piece", CENTIMETRE, 0.1),
                new Result(SHRINKAGE_SHARE, "Shrinkage, of the sculpt", PERCENT, 0.1),
                new Result(VOLUME_LEFT, "Volume that is left", PERCENT, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return what.startsWith("shrinkage") ? SHRINKAGE : PIECE;
    }

    @Override
    public boolean uses(String input, Given given) {
        return switch (input) {
            case SCULPT -> !given.choice(WAY).equals(TO_SCULPT);
            case PIECE -> !given.choice(WAY).equals(TO_PIECE);
            case SHRINKAGE -> !given.choice(WAY).equals(MEASURED);
            default -> true;
        };
    }

    @Override
    public void work(Given given, Work work) {
        Concentration lost =
                switch (given.choice(WAY)) {
                    case TO_SCULPT -> sculptFor(given, work);
                    case TO_PIECE -> pieceFrom(given, work);
                    default -> measured(given, work);
                };
        work.result(SHRINKAGE_SHARE, lost);
        Shrinkage shrinkage = new Shrinkage(lost);
        work.result(
                VOLUME_LEFT,
                work.step(
                        VOLUME_LEFT,
                        "Volume that is left",
                        "(100 % − s)³",
                        "(100 % − {})³",
                        Concentration.ofPercent(100 * shrinkage.volumeLeft()),
                        PERCENT,
                        Work.In.of(lost, PERCENT)));
        double left = shrinkage.lengthLeft().asFraction();
        work.slip(
                Slip.AREA_FOR_VOLUME,
                VOLUME_LEFT,
                () -> Concentration.ofPercent(100 * left * left),
                "A volume shrinks in three directions, an area in two.");
        work.note("A piece that shrinks more one way than another is not covered: measure along each way.");
    }

    private static Concentration sculptFor(Given given, Work work) {
        Length piece = given.get(PIECE, Length.class);
        Concentration left = left(given, work);
        work.result(PIECE_LENGTH, piece);
        work.result(
                SCULPT_LENGTH,
                work.step(
                        SCULPT_LENGTH,
                        "Length on the sculpt",
                        "sculpt = piece ÷ (100 % − s)",
                        "{} ÷ {}",
                        Shrinkage.leaving(left).sculptFor(piece),
                        CENTIMETRE,
                        Work.In.of(piece, CENTIMETRE),
                        Work.In.of(left, PERCENT)));
        Shrinkage right = shrinkage(given);
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                SCULPT_LENGTH,
                () -> right.pieceFrom(piece),
                "The sculpt is larger than the piece: divide by what is left.");
        work.slip(
                Slip.WRONG_WHOLE,
                SCULPT_LENGTH,
                () -> Length.ofMillimetres(
                        piece.inMillimetres() * (1 + right.ofSculpt().asFraction())),
                "The shrinkage counts on the sculpt, not on the piece: divide by what is left.");
        work.slip(
                Slip.LOST_FOR_LEFT,
                SCULPT_LENGTH,
                () -> Length.ofMillimetres(
                        piece.inMillimetres() * right.ofSculpt().asFraction()),
                "That is no whole length, only a part to add: divide by what is left.");
        return right.ofSculpt();
    }

    private static Concentration pieceFrom(Given given, Work work) {
        Length sculpt = given.get(SCULPT, Length.class);
        Concentration left = left(given, work);
        work.result(SCULPT_LENGTH, sculpt);
        work.result(
                PIECE_LENGTH,
                work.step(
                        PIECE_LENGTH,
                        "Length on the dry piece",
                        "piece = sculpt × (100 % − s)",
                        "{} × {}",
                        Shrinkage.leaving(left).pieceFrom(sculpt),
                        CENTIMETRE,
                        Work.In.of(sculpt, CENTIMETRE),
                        Work.In.of(left, PERCENT)));
        Shrinkage right = shrinkage(given);
        work.slip(
                Slip.DIVIDED_FOR_MULTIPLIED,
                PIECE_LENGTH,
                () -> right.sculptFor(sculpt),
                "The piece is smaller than the sculpt: multiply by what is left.");
        work.slip(
                Slip.LOST_FOR_LEFT,
                PIECE_LENGTH,
                () -> Length.ofMillimetres(
                        sculpt.inMillimetres() * right.ofSculpt().asFraction()),
                "That is how much shorter the piece is, not how long.");
        return right.ofSculpt();
    }

    private static Concentration measured(Given given, Work work) {
        Length sculpt = given.get(SCULPT, Length.class);
        Length piece = given.get(PIECE, Length.class);
        Shrinkage right = Shrinkage.measured(sculpt, piece);
        work.result(SCULPT_LENGTH, sculpt);
        work.result(PIECE_LENGTH, piece);
        Length lost = work.step(
                LOST,
                "Length that is lost",
                "sculpt − piece",
                "{} − {}",
                Length.ofMillimetres(sculpt.inMillimetres() - piece.inMillimetres()),
                CENTIMETRE,
                Work.In.of(sculpt, CENTIMETRE),
                Work.In.of(piece, CENTIMETRE));
        work.slip(
                Slip.WRONG_WHOLE,
                SHRINKAGE_SHARE,
                () -> Concentration.ofPercent(right.asShareOfPiece()),
                "The loss is counted on the sculpt, not on the piece.");
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                SHRINKAGE_SHARE,
                right::lengthLeft,
                "That is the share which is left. The shrinkage is the share which is lost.");
        return work.step(
                SHRINKAGE_SHARE,
                "Shrinkage, of the sculpt",
                "s = lost ÷ sculpt",
                "{} ÷ {}",
                Shrinkage.ofLoss(lost, sculpt).ofSculpt(),
                PERCENT,
                Work.In.of(lost, CENTIMETRE),
                Work.In.of(sculpt, CENTIMETRE));
    }

    private static Shrinkage shrinkage(Given given) {
        return new Shrinkage(given.get(SHRINKAGE, Concentration.class));
    }

    private static Concentration left(Given given, Work work) {
        Shrinkage shrinkage = shrinkage(given);
        return work.step(
                LEFT,
                "Share of the length that is left",
                "100 % − s",
                "100 % − {}",
                shrinkage.lengthLeft(),
                PERCENT,
                Work.In.of(shrinkage.ofSculpt(), PERCENT));
    }
}

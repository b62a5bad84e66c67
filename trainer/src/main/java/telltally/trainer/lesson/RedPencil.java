package telltally.trainer.lesson;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;
import telltally.trainer.lesson.Alignment.Step;
import telltally.trainer.lesson.Marking.Row;

/** Goes through an answer sheet segment by segment. */
final class RedPencil {
    /** A digit weighs more than any difference between two counts, which only decides between equal alignments. */
    private static final int A_DIGIT = 1000;

    private static final int MOST_DIFFERENCE = 99;

    private final FlashFormat format;
    private final Truth truth;
    private final AnswerSheet sheet;

    RedPencil(FlashFormat format, Truth truth, AnswerSheet sheet) {
        this.format = format;
        this.truth = truth;
        this.sheet = sheet;
    }

    List<Row> rows() {
        Set<Segment> segments = EnumSet.noneOf(Segment.class);
        segments.addAll(truth.codes().keySet());
        segments.addAll(sheet.segments());
        List<Row> rows = new ArrayList<>();
        segments.forEach(segment -> rows.addAll(rows(segment)));
        return rows;
    }

    private List<Row> rows(Segment segment) {
        CodeSigns signs = new CodeSigns(format, segment);
        List<Step<String>> steps = Alignment.of(sent(segment), written(segment), new CodeCosts(signs))
                .steps();
        return steps.stream().map(step -> row(signs, step)).toList();
    }

    private Row row(CodeSigns signs, Step<String> step) {
        Segment segment = signs.segment();
        if (step instanceof Step.Pair<String> pair) {
            List<Slip> slips = new DigitSlips(signs, pair.sent(), pair.written()).slips();
            return new Row(segment, Optional.of(pair.sent()), Optional.of(pair.written()), slips);
        }
        if (step instanceof Step.Lost<String> lost) {
            return new Row(segment, Optional.of(lost.sent()), Optional.empty(), List.of(lost(segment, lost.sent())));
        }
        String written = ((Step.Extra<String>) step).written();
        return new Row(segment, Optional.empty(), Optional.of(written), List.of(extra(signs, written)));
    }

    private Slip lost(Segment segment, String code) {
        Optional<Slip> misfiled =
                filedElsewhere(segment, code).map(filed -> new Slip.WrongSegment(code, segment, filed));
        if (misfiled.isPresent()) {
            return misfiled.get();
        }
        return written(segment).contains(code) ? new Slip.OutOfOrder(segment, code) : new Slip.LostCode(segment, code);
    }

    private Slip extra(CodeSigns signs, String written) {
        Segment segment = signs.segment();
        Optional<Slip> marker =
                Marker.writtenAs(written, signs, truth).map(found -> new Slip.MarkerTakenForCode(found, written));
        if (marker.isPresent()) {
            return marker.get();
        }
        if (sent(segment).contains(written)) {
            boolean again =
                    written(segment).indexOf(written) != written(segment).lastIndexOf(written);
            return again ? new Slip.WrittenTwice(written) : new Slip.OutOfOrder(segment, written);
        }
        Optional<Slip> misfiled =
                sentElsewhere(segment, written).map(sent -> new Slip.WrongSegment(written, sent, segment));
        return misfiled.orElse(new Slip.ExtraCode(segment, written));
    }

    /** Where a code of this segment was written instead, if it is missing here. */
    private Optional<Segment> filedElsewhere(Segment segment, String code) {
        return written(segment).contains(code)
                ? Optional.empty()
                : sheet.segments().stream()
                        .filter(other -> other != segment
                                && written(other).contains(code)
                                && !sent(other).contains(code))
                        .findFirst();
    }

    /** The segment in which a code written here was sent, if it is missing there. */
    private Optional<Segment> sentElsewhere(Segment segment, String written) {
        return truth.codes().keySet().stream()
                .filter(other -> other != segment && sent(other).contains(written))
                .filter(other ->
                        filedElsewhere(other, written).filter(segment::equals).isPresent())
                .findFirst();
    }

    private List<String> sent(Segment segment) {
        return truth.codes().getOrDefault(segment, List.of());
    }

    private List<String> written(Segment segment) {
        CodeSigns signs = new CodeSigns(format, segment);
        return sheet.codes(segment).stream().map(signs::plain).toList();
    }

    /** A code costs its digits, a changed one the digits that differ. */
    private final class CodeCosts implements Alignment.Costs<String> {
        private final CodeSigns signs;

        CodeCosts(CodeSigns signs) {
            this.signs = signs;
        }

        @Override
        public int pair(String sent, String written) {
            if (sent.equals(written)) {
                return 0;
            }
            // What is known to be something else must not pass for a badly counted code.
            boolean somethingElse = Marker.writtenAs(written, signs, truth).isPresent()
                    || sentElsewhere(signs.segment(), written).isPresent()
                    || filedElsewhere(signs.segment(), sent).isPresent();
            return somethingElse ? Alignment.FORBIDDEN : A_DIGIT * digitsOff(sent, written) + countsOff(sent, written);
        }

        @Override
        public int lost(String sent) {
            return A_DIGIT * signs.split(sent).size();
        }

        @Override
        public int extra(String written) {
            return A_DIGIT * signs.split(written).size();
        }

        @Override
        public int swap(String first, String second) {
            return Alignment.FORBIDDEN;
        }

        private int digitsOff(String sent, String written) {
            return Alignment.of(signs.split(sent), signs.split(written), Alignment.unitCosts())
                    .cost();
        }

        private int countsOff(String sent, String written) {
            return Math.min(MOST_DIFFERENCE, new DigitSlips(signs, sent, written).countsOff());
        }
    }
}

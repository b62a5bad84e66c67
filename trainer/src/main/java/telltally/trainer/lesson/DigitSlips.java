package telltally.trainer.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import telltally.trainer.lesson.Alignment.Step;

/** The errors inside one code. */
record DigitSlips(CodeSigns signs, String sent, String written) {
    List<Slip> slips() {
        List<Slip> slips = new ArrayList<>();
        int place = 0;
        for (Step<String> step : steps()) {
            if (step instanceof Step.Pair<String> pair) {
                if (!pair.sent().equals(pair.written())) {
                    slips.add(changed(place, pair));
                }
                place++;
            } else if (step instanceof Step.Lost<String> lost) {
                slips.add(new Slip.MissingDigit(sent, where(place++), lost.sent()));
            } else if (step instanceof Step.Extra<String> extra) {
                slips.add(new Slip.DigitTooMany(sent, written, extra.written()));
            } else {
                slips.add(new Slip.SwappedDigits(sent, written));
                place += 2;
            }
        }
        return slips;
    }

    /** By how many flashes the counts differ, all digits together. */
    int countsOff() {
        return slips().stream()
                .filter(Slip.MiscountedDigit.class::isInstance)
                .mapToInt(slip -> Math.abs(((Slip.MiscountedDigit) slip).off()))
                .sum();
    }

    private List<Step<String>> steps() {
        return Alignment.of(signs.split(sent), signs.split(written), Alignment.unitCosts())
                .steps();
    }

    private Slip changed(int place, Step.Pair<String> pair) {
        OptionalInt flashes = signs.flashes(place, pair.sent());
        OptionalInt counted = signs.flashes(place, pair.written());
        return flashes.isPresent() && counted.isPresent()
                ? new Slip.MiscountedDigit(sent, where(place), flashes.getAsInt(), counted.getAsInt())
                : new Slip.MisreadSign(sent, where(place), pair.sent(), pair.written());
    }

    private int where(int place) {
        return signs.oneCount() ? Slip.WHOLE_COUNT : place;
    }
}

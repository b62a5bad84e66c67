package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashFormat.Repeats;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.FlashKind;

/** Formats that differ from a shipped one in timing, repeats or the places of a code; the id stays. */
record FormatVariant(FlashFormat format) {
    /** Everything lasts longer by one factor, the gaps above those within a digit by another one as well. */
    FormatVariant eased(double clock, double gapStretch) {
        return timed(clock, gapStretch, gapStretch);
    }

    /**
     * @param digitStretch of the gaps between digits, beside the clock
     * @param codeStretch of the gaps between codes and all longer ones, beside the clock
     */
    FormatVariant timed(double clock, double digitStretch, double codeStretch) {
        Gaps gaps = format.gaps();
        Gaps eased = new Gaps(
                times(gaps.withinDigitNanos(), clock),
                times(gaps.betweenDigitsNanos(), clock * digitStretch),
                times(gaps.betweenCodesNanos(), clock * codeStretch),
                times(gaps.beforeRepeatNanos(), clock * codeStretch));
        CodeShape shape = format.shape() instanceof Counted counted
                ? new Counted(counted.places().stream()
                        .map(place -> new Place(slower(place.flash(), clock), place.counts()))
                        .toList())
                : format.shape();
        Optional<LeadIn> leadIn = format.leadIn()
                .map(each -> new LeadIn(times(each.litNanos(), clock), times(each.darkAfterNanos(), clock)));
        Optional<Sessions> sessions = format.sessions()
                .map(each -> new Sessions(
                        each.separatorFlashes(),
                        times(each.aroundSeparatorNanos(), clock * codeStretch),
                        slower(each.cylinderFlash(), clock),
                        each.runningTestNanos(),
                        each.mostBalanceFlashes()));
        return with(shape, eased, format.repeats(), leadIn, sessions);
    }

    /** The gap before the list begins again, as a multiple of that between codes. */
    FormatVariant repeatGap(double share) {
        Gaps gaps = format.gaps();
        Gaps changed = new Gaps(
                gaps.withinDigitNanos(),
                gaps.betweenDigitsNanos(),
                gaps.betweenCodesNanos(),
                times(gaps.betweenCodesNanos(), share));
        return with(format.shape(), changed, format.repeats(), format.leadIn(), format.sessions());
    }

    /** Each code so often before the next, the list so often; 0 is until the key is off. */
    FormatVariant sent(int eachCodeTimes, int listTimes) {
        Repeats repeats = new Repeats(eachCodeTimes, listTimes, format.repeats().mostCodes());
        return with(format.shape(), format.gaps(), repeats, format.leadIn(), format.sessions());
    }

    /** Codes of this many places, each like the first one and counting up to so many flashes. */
    FormatVariant places(int places, int mostFlashes) {
        Place first = ((Counted) format.shape()).places().get(0);
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int flashes = 1; flashes <= mostFlashes; flashes++) {
            counts.put(Integer.toString(flashes), flashes);
        }
        List<Place> all = Collections.nCopies(places, new Place(first.flash(), counts));
        return with(new Counted(all), format.gaps(), format.repeats(), format.leadIn(), format.sessions());
    }

    /** The running test's dark time. */
    FormatVariant runningTest(long nanos) {
        Optional<Sessions> sessions = format.sessions()
                .map(each -> new Sessions(
                        each.separatorFlashes(),
                        each.aroundSeparatorNanos(),
                        each.cylinderFlash(),
                        nanos,
                        each.mostBalanceFlashes()));
        return with(format.shape(), format.gaps(), format.repeats(), format.leadIn(), sessions);
    }

    /** One list and nothing around it: no segments, no frame. */
    FormatVariant listAlone() {
        FormatVariant alone = with(format.shape(), format.gaps(), format.repeats(), format.leadIn(), Optional.empty());
        FlashFormat framed = alone.format();
        return new FormatVariant(new FlashFormat(
                framed.id(),
                framed.title(),
                framed.notes(),
                framed.restsLit(),
                framed.shape(),
                framed.gaps(),
                framed.repeats(),
                framed.leadIn(),
                Optional.empty(),
                framed.nothingToReport(),
                Optional.empty(),
                Optional.empty()));
    }

    /** The flash of the first place lasts longer by a factor. */
    FormatVariant firstPlaceLonger(double factor) {
        List<Place> places = new ArrayList<>(((Counted) format.shape()).places());
        places.set(
                0,
                new Place(slower(places.get(0).flash(), factor), places.get(0).counts()));
        return with(new Counted(places), format.gaps(), format.repeats(), format.leadIn(), format.sessions());
    }

    private FormatVariant with(
            CodeShape shape, Gaps gaps, Repeats repeats, Optional<LeadIn> leadIn, Optional<Sessions> sessions) {
        // The fast list is for the wire alone; a drill has only a lamp.
        return new FormatVariant(new FlashFormat(
                format.id(),
                format.title(),
                format.notes(),
                format.restsLit(),
                shape,
                gaps,
                repeats,
                leadIn,
                format.framingCode(),
                format.nothingToReport(),
                sessions,
                Optional.empty()));
    }

    private static FlashKind slower(FlashKind flash, double clock) {
        return new FlashKind(flash.name(), times(flash.onNanos(), clock));
    }

    private static long times(long nanos, double factor) {
        return StrictMath.round(nanos * factor);
    }
}

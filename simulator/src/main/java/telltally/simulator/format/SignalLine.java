package telltally.simulator.format;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.CodeShape.Sign;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * Writes flashes and gaps one after the other, all of them faster by one factor, and remembers the groups. Where the
 * lamp rests lit, a gap is light and a flash is an eclipse.
 */
final class SignalLine {
    private final Gaps gaps;
    private final boolean restsLit;
    private final int timesFaster;
    private final PulseTrain.Builder pulses = PulseTrain.builder();
    private final List<SentGroup> groups = new ArrayList<>();
    private boolean listBegun;

    SignalLine(FlashFormat format, int timesFaster) {
        this.gaps = format.gaps();
        this.restsLit = format.restsLit();
        this.timesFaster = timesFaster;
    }

    long nowNanos() {
        return pulses.nowNanos();
    }

    /** From here on a new list begins: its first code has no gap before it. */
    void beginList() {
        listBegun = false;
    }

    /** Whether a group was written since the list began. */
    boolean listBegun() {
        return listBegun;
    }

    void gap(long nanos) {
        pulses.stay(restsLit, nanos / timesFaster);
    }

    void group(GroupKind kind, Segment segment, List<Sign> signs) {
        List<SentSign> sent = new ArrayList<>();
        for (Sign sign : signs) {
            if (!sent.isEmpty()) {
                gap(gaps.betweenDigitsNanos());
            }
            sent.add(sign(sign));
        }
        StringBuilder digits = new StringBuilder();
        signs.forEach(sign -> digits.append(sign.text()));
        groups.add(new SentGroup(kind, segment, digits.toString(), sent));
        listBegun = true;
    }

    void blink(Segment segment, NothingToReport.Blinking blinking, int times) {
        List<Interval> flashes = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            if (i > 0) {
                gap(blinking.offNanos());
            }
            flashes.add(flash(blinking.onNanos()));
        }
        steady(segment, flashes);
    }

    /** A light that is no flash of any code. */
    void leadIn(Segment segment, LeadIn leadIn) {
        steady(segment, List.of(flash(leadIn.litNanos())));
        gap(leadIn.darkAfterNanos());
    }

    PulseTrain train() {
        return pulses.build();
    }

    List<SentGroup> groups() {
        return groups;
    }

    private void steady(Segment segment, List<Interval> flashes) {
        groups.add(new SentGroup(GroupKind.STEADY, segment, "", List.of(new SentSign("", flashes))));
        listBegun = true;
    }

    private SentSign sign(Sign sign) {
        List<Interval> flashes = new ArrayList<>();
        for (FlashKind flash : sign.flashes()) {
            if (!flashes.isEmpty()) {
                gap(gaps.withinDigitNanos());
            }
            flashes.add(flash(flash.onNanos()));
        }
        return new SentSign(sign.text(), flashes);
    }

    private Interval flash(long onNanos) {
        long startNanos = nowNanos();
        pulses.stay(!restsLit, onNanos / timesFaster);
        return new Interval(!restsLit, startNanos, nowNanos());
    }
}

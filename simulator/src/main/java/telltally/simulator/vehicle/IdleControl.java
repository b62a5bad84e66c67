package telltally.simulator.vehicle;

/**
 * Holds a speed by the air it lets past the throttle: a share of all the air, proportional to the speed that is
 * missing plus what has been learnt by integration. Gains follow from the engine: the zero of the controller lies on the
 * engine's own time constant, which leaves a loop that closes in a chosen time (pole cancellation, as in any textbook on
 * control).
 */
final class IdleControl {
    /** Slow against an engine cycle at idle (0.16 s), so that sampling once a cycle does no harm. */
    private static final double CLOSING_SECONDS = 1.0;

    /** More air than this does not go past a closed throttle. */
    private static final double MOST_SHARE = 0.2;

    private final EngineMake make;
    private double targetRpm;
    private double proportional;
    private double integral;
    private double learntShare;
    private double share;
    private boolean held;

    IdleControl(EngineMake make, double targetRpm, double learntShare) {
        this.make = make;
        this.learntShare = learntShare;
        this.share = learntShare;
        holdSpeed(targetRpm);
    }

    void holdSpeed(double rpm) {
        targetRpm = rpm;
        double settling = make.settlingSeconds(rpm, 0);
        double rpmPerShare = make.rpmPerWatt(rpm, 0) * make.fullAirWatts();
        proportional = settling / (rpmPerShare * CLOSING_SECONDS);
        integral = proportional / settling;
        held = false;
    }

    /** Leaves the air as learnt, whatever the speed does from now on. */
    void holdAir() {
        held = true;
        share = learntShare;
    }

    double airShare() {
        return share;
    }

    void cycleEnded(double rpm, double seconds) {
        if (!held) {
            double missing = targetRpm - rpm;
            learntShare = within(learntShare + integral * missing * seconds);
            share = within(learntShare + proportional * missing);
        }
    }

    private static double within(double share) {
        return Math.max(0, Math.min(MOST_SHARE, share));
    }
}

package telltally.simulator.vehicle;

import java.util.List;
import java.util.Optional;

/**
 * The cylinder balance test: the controller holds a raised speed, cuts one injector at a time and compares the speed
 * before and after. Who owns the engine may move its throttle between two calls; that spoils the test. Cylinders are
 * taken in the order of their numbers.
 */
public final class CylinderBalance {
    /** A throttle that is opened further than this was touched. */
    private static final double TOUCHED_SHARE = 0.01;

    private static final int STEPS_PER_CYLINDER = 5;

    private final Engine engine;
    private final BalancePlan plan;
    private final BalanceJudge judge;
    private final double[] baselineRpm;
    private final double[] cutRpm;
    private final double[] stepSeconds;

    private int step;
    private double endSeconds;
    private double windowStartRadians;
    private boolean spoiled;
    private Optional<BalanceVerdict> verdict = Optional.empty();

    /**
     * Starts at the engine's present instant.
     *
     * @throws IllegalArgumentException if the engine has more cylinders than flashes can tell: nine means all contribute
     */
    public CylinderBalance(Engine engine, BalancePlan plan, BalanceJudge judge) {
        int count = engine.cylinders().count();
        if (count >= BalanceVerdict.ALL_CONTRIBUTE_FLASHES) {
            throw new IllegalArgumentException("no balance test tells " + count + " cylinders apart by flashes");
        }
        this.engine = engine;
        this.plan = plan;
        this.judge = judge;
        this.baselineRpm = new double[count];
        this.cutRpm = new double[count];
        this.stepSeconds = new double[] {
            plan.recoverSeconds(),
            plan.stillSeconds(),
            plan.baselineSeconds(),
            plan.settleSeconds(),
            plan.averageSeconds()
        };
        this.endSeconds = engine.atNanos() / 1e9 + plan.riseSeconds() + plan.recoverSeconds();
        engine.holdSpeed(plan.speedRpm());
    }

    /** Takes the engine along; after the end of the test the engine runs on at its idle speed. */
    public void advanceTo(long nanos) {
        while (verdict.isEmpty() && endNanos() <= nanos) {
            advanceEngine(endNanos());
            endStep();
        }
        advanceEngine(nanos);
    }

    /** Runs to the end with nobody touching anything. */
    public BalanceVerdict run() {
        while (verdict.isEmpty()) {
            advanceTo(endNanos());
        }
        return verdict.orElseThrow();
    }

    /** Empty until the test is over. */
    public Optional<BalanceVerdict> verdict() {
        return verdict;
    }

    /** Which cylinder is cut at the moment, if any. */
    public Optional<Integer> cutCylinder() {
        boolean cut = verdict.isEmpty() && step % STEPS_PER_CYLINDER >= 3;
        return cut ? Optional.of(cylinder()) : Optional.empty();
    }

    private void advanceEngine(long nanos) {
        engine.advanceTo(nanos);
        if (verdict.isEmpty()) {
            spoiled |= engine.throttleShare() > TOUCHED_SHARE || engine.stalled();
        }
    }

    private void endStep() {
        int ended = step % STEPS_PER_CYLINDER;
        int index = cylinder() - 1;
        switch (ended) {
            case 0 -> engine.holdAir();
            case 1 -> windowStartRadians = engine.crankRadians();
            case 2 -> {
                baselineRpm[index] = meanRpm(plan.baselineSeconds());
                engine.cut(cylinder());
            }
            case 3 -> windowStartRadians = engine.crankRadians();
            default -> {
                cutRpm[index] = meanRpm(plan.averageSeconds());
                engine.restore(cylinder());
                engine.holdSpeed(plan.speedRpm());
            }
        }
        step++;
        endSeconds += stepSeconds[step % STEPS_PER_CYLINDER];
        if (step == STEPS_PER_CYLINDER * cutRpm.length) {
            finish();
        }
    }

    private void finish() {
        engine.holdSpeed(engine.make().idleRpm());
        Contributions drops = Contributions.of(baselineRpm, cutRpm);
        verdict = Optional.of(
                spoiled
                        ? new BalanceVerdict(BalanceVerdict.Outcome.SPOILED, List.of(), drops.drops())
                        : judge.judge(drops));
    }

    private double meanRpm(double seconds) {
        return (engine.crankRadians() - windowStartRadians) / seconds * EngineMake.RPM_PER_RADIAN_PER_SECOND;
    }

    private int cylinder() {
        return step / STEPS_PER_CYLINDER + 1;
    }

    private long endNanos() {
        return Math.round(endSeconds * 1e9);
    }
}

package telltally.simulator.vehicle;

import telltally.simulator.chance.Chance;

/**
 * A running engine, from firing to firing. Each firing gives the crankshaft its energy at once; between firings the
 * crankshaft coasts against friction and load ({@link Coast}). Air flows in at a rate that the throttle and the idle
 * control set, whatever the speed, so a charge is what flowed in since the firing before: a slower engine gets fuller
 * charges, and power, not torque, is what a throttle position sets. Not for sharing between threads.
 */
public final class Engine {
    private static final double NANOS = 1e9;

    private final EngineMake make;
    private final Cylinders cylinders;
    private final Chance variation;
    private final IdleControl idle;
    private final SpeedTrace trace = new SpeedTrace();
    private final int[] firingOrder;
    private final double[] strength;
    private final boolean[] cut;
    private final double intervalRadians;

    private double throttleShare;
    private double loadNewtonMetres;
    private long nowNanos;
    private long firings;
    private double firedAtSeconds;
    private double nextAtSeconds;
    private double cycleStartSeconds;
    private double firedSpeed;
    private double torque;

    /**
     * Starts at instant 0, just after a firing, with the controller holding the idle speed.
     *
     * @param startRpm more than zero
     * @param loadNewtonMetres see {@link Vehicle#loadNewtonMetres}
     * @param chance the engine draws from streams below this one
     */
    public Engine(EngineMake make, Cylinders cylinders, double startRpm, double loadNewtonMetres, Chance chance) {
        this.make = make;
        this.cylinders = cylinders;
        this.variation = chance.stream("engine/firing");
        this.firingOrder =
                cylinders.firingOrder().stream().mapToInt(number -> number - 1).toArray();
        this.strength =
                cylinders.byNumber().stream().mapToDouble(Cylinder::strength).toArray();
        this.cut = new boolean[cylinders.count()];
        this.intervalRadians = cylinders.firingIntervalRadians();
        this.loadNewtonMetres = requireLoad(loadNewtonMetres);
        double learnt = make.wattsToHold(startRpm, loadNewtonMetres) / make.fullAirWatts();
        this.idle = new IdleControl(make, make.idleRpm(), learnt);
        beginCoast(startRpm / EngineMake.RPM_PER_RADIAN_PER_SECOND);
        this.nextAtSeconds = coast().secondsToTurn(intervalRadians);
    }

    /** The engine of a vehicle, idling in these conditions. */
    public static Engine idling(Vehicle vehicle, Conditions conditions, Chance chance) {
        EngineMake make = vehicle.engine();
        Engine engine =
                new Engine(make, vehicle.cylinders(), make.idleRpm(), vehicle.loadNewtonMetres(conditions), chance);
        engine.throttle(conditions.throttleShare());
        return engine;
    }

    public EngineMake make() {
        return make;
    }

    public Cylinders cylinders() {
        return cylinders;
    }

    public long atNanos() {
        return nowNanos;
    }

    /** Of the crankshaft at this instant, with the ripple of single firings; see the trace for means. */
    public double speedRpm() {
        return Math.max(0, coast().speedAfter(sinceFiringSeconds())) * EngineMake.RPM_PER_RADIAN_PER_SECOND;
    }

    /** How far the crankshaft has turned since instant 0. Mean speeds over any span follow from it. */
    public double crankRadians() {
        return firings * intervalRadians + coast().radiansAfter(sinceFiringSeconds());
    }

    /** How often a cylinder had its turn to fire, cut ones included. */
    public long firings() {
        return firings;
    }

    /** Whether the crankshaft stands, or will stand before the next firing. */
    public boolean stalled() {
        return Double.isInfinite(nextAtSeconds);
    }

    public SpeedTrace trace() {
        return trace;
    }

    /** Stops injecting into a cylinder, numbered from 1, from its next turn on. */
    public void cut(int cylinder) {
        cut[cylinder - 1] = true;
    }

    public void restore(int cylinder) {
        cut[cylinder - 1] = false;
    }

    /**
     * From the next firing on.
     *
     * @param share 0 closed, 1 to the floor
     */
    public void throttle(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("the throttle opens from 0 to 1, not to " + share);
        }
        throttleShare = share;
    }

    public double throttleShare() {
        return throttleShare;
    }

    /** From the next firing on. */
    public void load(double newtonMetres) {
        loadNewtonMetres = requireLoad(newtonMetres);
    }

    /** Lets the controller bring the engine to this speed, throttle closed, and hold it. */
    public void holdSpeed(double rpm) {
        idle.holdSpeed(rpm);
    }

    /** Lets the controller leave the air as it is: the speed is free. */
    public void holdAir() {
        idle.holdAir();
    }

    /**
     * @throws IllegalArgumentException if that instant has passed
     */
    public void advanceTo(long nanos) {
        if (nanos < nowNanos) {
            throw new IllegalArgumentException("already at " + nowNanos + " ns, not before " + nanos);
        }
        while (nextAtSeconds * NANOS <= nanos) {
            fire();
        }
        nowNanos = nanos;
    }

    /** To just after the next firing; a stalled engine stays where it is. */
    public void advanceFiring() {
        if (!stalled()) {
            fire();
            nowNanos = Math.max(nowNanos, (long) Math.ceil(firedAtSeconds * NANOS));
        }
    }

    private void fire() {
        double waited = nextAtSeconds - firedAtSeconds;
        double before = coast().speedAfter(waited);
        int turn = (int) (firings % firingOrder.length);
        double energy = firingJoules(firingOrder[turn], waited, before);
        firings++;
        firedAtSeconds = nextAtSeconds;
        if (turn == firingOrder.length - 1) {
            endCycle();
        }
        beginCoast(Math.sqrt(before * before + 2 * energy / make.inertia()));
        nextAtSeconds = firedAtSeconds + coast().secondsToTurn(intervalRadians);
    }

    /** The variation is drawn for silent cylinders too, so that cutting one leaves the others' firings as they were. */
    private double firingJoules(int index, double waitedSeconds, double speed) {
        double luck = Math.max(0, 1 + make.cycleVariation() * variation.nextNormal());
        boolean overLimit = speed * EngineMake.RPM_PER_RADIAN_PER_SECOND > make.limitRpm();
        if (cut[index] || overLimit) {
            return 0;
        }
        double airShare = Math.min(1, idle.airShare() + throttleShare);
        double charge = Math.min(make.fullChargeJoules(), airShare * make.fullAirWatts() * waitedSeconds);
        return charge * strength[index] * luck;
    }

    private void endCycle() {
        double seconds = firedAtSeconds - cycleStartSeconds;
        double meanRpm = 120 / seconds;
        cycleStartSeconds = firedAtSeconds;
        trace.add(Math.round(firedAtSeconds * NANOS), meanRpm);
        idle.cycleEnded(meanRpm, seconds);
    }

    private void beginCoast(double radiansPerSecond) {
        firedSpeed = radiansPerSecond;
        torque = make.constantFriction() + loadNewtonMetres;
    }

    /** Made anew each time it is asked: it never outlives the asking, so it costs no memory. */
    private Coast coast() {
        return new Coast(firedSpeed, make.inertia(), torque, make.linearFriction());
    }

    /** No longer than until a stalling crankshaft stands: friction does not turn it back. */
    private double sinceFiringSeconds() {
        double seconds = nowNanos / NANOS - firedAtSeconds;
        return stalled() ? Math.min(seconds, coast().secondsToStand()) : seconds;
    }

    private static double requireLoad(double newtonMetres) {
        if (!(newtonMetres >= 0 && Double.isFinite(newtonMetres))) {
            throw new IllegalArgumentException("a load of " + newtonMetres + " N m");
        }
        return newtonMetres;
    }
}

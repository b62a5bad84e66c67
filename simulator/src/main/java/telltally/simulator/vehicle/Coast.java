package telltally.simulator.vehicle;

/**
 * A crankshaft between two firings: J dw/dt = -T - b w from a starting speed, solved exactly. With w' = T/b and s = J/b
 * the speed is w(t) = (w0 + w') exp(-t/s) - w' and the angle (w0 + w') s (1 - exp(-t/s)) - w' t; separation of
 * variables, as in any textbook on mechanics. A steady driving torque is one with T below zero.
 *
 * @param startSpeed radians per second
 * @param inertia J, kg m^2
 * @param torque T, N m against the turning
 * @param linearFriction b, N m s; more than zero
 */
record Coast(double startSpeed, double inertia, double torque, double linearFriction) {
    /** Each of Newton's steps about squares the relative error; the cap is for a shaft that all but stands. */
    private static final int MOST_STEPS = 60;

    /** After a correction of this share what is left is beyond the digits of a double. */
    private static final double SQUARE_IS_NOTHING = 1e-9;

    /** Radians per second; below zero beyond the instant at which a braked shaft stands. */
    double speedAfter(double seconds) {
        double sunk = StrictMath.expm1(-seconds * linearFriction / inertia);
        return startSpeed + (startSpeed + torque / linearFriction) * sunk;
    }

    double radiansAfter(double seconds) {
        double slope = torque / linearFriction;
        double sunk = StrictMath.expm1(-seconds * linearFriction / inertia);
        return -(startSpeed + slope) * inertia / linearFriction * sunk - slope * seconds;
    }

    /** When a braked shaft stands. */
    double secondsToStand() {
        return inertia / linearFriction * StrictMath.log1p(startSpeed * linearFriction / torque);
    }

    /**
     * When a braked shaft has turned this far; infinite if it stands before. Its speed falls, so the angle is a concave
     * function of time, and Newton's steps from the left of the answer never pass it. The start lies left of it: a
     * braked shaft is later than its first braking alone would make it.
     */
    double secondsToTurn(double radians) {
        if (standsWithin(radians)) {
            return Double.POSITIVE_INFINITY;
        }
        double slope = torque / linearFriction;
        double rate = linearFriction / inertia;
        // At the starting speed, and as much later as the first braking makes it.
        double lag = (startSpeed + slope) * rate * radians / (2 * startSpeed * startSpeed);
        double seconds = radians / startSpeed * (1 + Math.min(lag, 0.5));
        for (int step = 0; step < MOST_STEPS; step++) {
            double sunk = StrictMath.expm1(-seconds * rate);
            double turned = -(startSpeed + slope) / rate * sunk - slope * seconds;
            double correction = (radians - turned) / (startSpeed + (startSpeed + slope) * sunk);
            seconds += correction;
            if (Math.abs(correction) <= SQUARE_IS_NOTHING * seconds) {
                break;
            }
        }
        return seconds;
    }

    private boolean standsWithin(double radians) {
        // More energy than the greatest torque could take on the way: the common case, told without a logarithm.
        double energy = inertia * startSpeed * startSpeed / 2;
        if (energy > (torque + linearFriction * startSpeed) * radians) {
            return false;
        }
        if (startSpeed <= 0) {
            return true;
        }
        double farthest = torque > 0 ? radiansAfter(secondsToStand()) : startSpeed * inertia / linearFriction;
        return farthest <= radians;
    }
}

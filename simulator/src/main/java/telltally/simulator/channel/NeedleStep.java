package telltally.simulator.channel;

/**
 * How a damped spring moves in a fixed time, exactly: the distance from rest and the speed afterwards are linear in
 * those before. Closed form of x'' + 2 zeta w x' + w^2 x = 0, any textbook on control.
 */
record NeedleStep(double distancePerDistance, double distancePerSpeed, double speedPerDistance, double speedPerSpeed) {
    static NeedleStep of(double naturalHertz, double damping, double seconds) {
        double w = 2 * Math.PI * naturalHertz;
        double square = w * w * (1 - damping * damping);
        double wave = Math.sqrt(Math.abs(square));
        double decay = damping * w;
        double even; // e^-decay t times cos or cosh
        double odd; // e^-decay t times sin or sinh, over the wave's rate
        if (wave * seconds < 1e-6) {
            even = StrictMath.exp(-decay * seconds);
            odd = even * seconds;
        } else if (square > 0) {
            double fade = StrictMath.exp(-decay * seconds);
            even = fade * StrictMath.cos(wave * seconds);
            odd = fade * StrictMath.sin(wave * seconds) / wave;
        } else {
            double slow = StrictMath.exp((wave - decay) * seconds);
            double fast = StrictMath.exp((-wave - decay) * seconds);
            even = (slow + fast) / 2;
            odd = (slow - fast) / (2 * wave);
        }
        return new NeedleStep(even + decay * odd, odd, -w * w * odd, even - decay * odd);
    }

    double distance(double distance, double speed) {
        return distancePerDistance * distance + distancePerSpeed * speed;
    }

    double speed(double distance, double speed) {
        return speedPerDistance * distance + speedPerSpeed * speed;
    }
}

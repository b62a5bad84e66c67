package telltally.simulator.vehicle;

/** A manual gearbox has a clutch and no park; an automatic one has park and no clutch. */
public enum Transmission {
    MANUAL {
        @Override
        public boolean admits(Conditions conditions) {
            return conditions.gear() != Gear.PARK;
        }

        /** In gear with the clutch up the vehicle would move off or stall, which no bench does: no load is added. */
        @Override
        double loadNewtonMetres(Conditions conditions) {
            return 0;
        }
    },
    AUTOMATIC {
        @Override
        public boolean admits(Conditions conditions) {
            return !conditions.clutchDown();
        }

        /** The converter's drag with the vehicle held; a typical figure, from memory. */
        @Override
        double loadNewtonMetres(Conditions conditions) {
            return conditions.gear() == Gear.ENGAGED ? 20 : 0;
        }
    };

    public abstract boolean admits(Conditions conditions);

    abstract double loadNewtonMetres(Conditions conditions);
}

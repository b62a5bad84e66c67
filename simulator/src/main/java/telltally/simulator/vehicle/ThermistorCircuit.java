package telltally.simulator.vehicle;

import java.util.List;

/**
 * A temperature sensor between signal and return, pulled up to the reference inside the controller. Colder means more
 * ohms and more volts; an open circuit looks like deepest cold, a short to ground like great heat.
 *
 * @param medium which temperature the sensor sits in
 */
public record ThermistorCircuit(String name, Medium medium, Thermistor curve, double pullUpOhms, Wire signal, Wire back)
        implements Circuit {
    /** What a temperature sensor sits in. */
    public enum Medium {
        COOLANT {
            @Override
            double celsius(Conditions conditions) {
                return conditions.coolantCelsius();
            }
        },
        AIR {
            @Override
            double celsius(Conditions conditions) {
                return conditions.airCelsius();
            }
        };

        abstract double celsius(Conditions conditions);
    }

    public ThermistorCircuit {
        Circuit.requireOhms(pullUpOhms);
        Circuit.require(signal, Place.SIGNAL_WIRE);
        Circuit.require(back, Place.RETURN_WIRE);
    }

    @Override
    public List<Wire> wires() {
        return List.of(signal, back);
    }

    @Override
    public Wire sensed() {
        return signal;
    }

    @Override
    public void connect(ResistorNetwork network, CircuitState state) {
        double celsius = medium.celsius(state.conditions()) + state.driftKelvin();
        network.join(signal.inside(), back.inside(), curve.ohms(celsius));
        network.join(Node.REFERENCE, signal.far().deviceSide(), pullUpOhms);
        network.join(back.far().deviceSide(), Node.GROUND, JOINT_OHMS);
    }

    @Override
    public boolean admitsFunctional(Fault.Functional fault) {
        return fault instanceof Fault.DriftedByKelvin;
    }

    @Override
    public double seen(double volts) {
        return Math.min(volts, REFERENCE_VOLTS);
    }

    /** Volts at the pin of a sound circuit, its wires taken to have no resistance. */
    public double voltsAt(double celsius) {
        double ohms = curve.ohms(celsius);
        return REFERENCE_VOLTS * ohms / (ohms + pullUpOhms);
    }

    /** What a controller that trusts the circuit takes the temperature to be, from volts between 0 and the reference. */
    public double celsiusAt(double volts) {
        return curve.celsius(pullUpOhms * volts / (REFERENCE_VOLTS - volts));
    }
}

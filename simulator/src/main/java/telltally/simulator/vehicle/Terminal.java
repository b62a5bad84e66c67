package telltally.simulator.vehicle;

/** One pin of a named connector. Plugged in, both sides of it are one point; unplugged, they are two. */
public record Terminal(String connector, String pin) {
    public Terminal {
        if (connector.isBlank() || pin.isBlank()) {
            throw new IllegalArgumentException("a terminal needs a connector and a pin: " + connector + ":" + pin);
        }
    }

    /** The side the wire ends on. */
    public Node harnessSide() {
        return new Node(this + " harness side");
    }

    /** The side of the sensor, the solenoid or the controller. */
    public Node deviceSide() {
        return new Node(this + " device side");
    }

    @Override
    public String toString() {
        return connector + ":" + pin;
    }
}

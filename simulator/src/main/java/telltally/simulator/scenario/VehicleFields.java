package telltally.simulator.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import telltally.simulator.document.Fields;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Cylinder.Weakness;
import telltally.simulator.vehicle.Cylinders;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.UsualVehicle;
import telltally.simulator.vehicle.Vehicle;

/** Reads the vehicle of a lesson and the conditions it is in. */
final class VehicleFields {
    private VehicleFields() {}

    /** A vehicle whose circuits are all sound. */
    static Vehicle vehicle(Fields fields, Optional<FlashFormat> format) {
        int count = fields.whole("cylinders", Cylinders.FEWEST, Cylinders.MOST);
        if (count % 2 != 0 && format.isPresent() && format.get().sessions().isPresent()) {
            fields.problem("cylinders", "is odd; the running test opens with half the number of cylinders");
        }
        Transmission transmission = fields.choice("transmission", List.of(Transmission.values()), VehicleFields::word);
        Cylinders cylinders = Cylinders.sound(count);
        if (fields.has("firing_order")) {
            cylinders = inOrder(fields, cylinders);
        }
        for (Fields weak : fields.optionalObjects("weak")) {
            int number = weak.whole("cylinder", 1, count);
            double strength = weak.number("strength", 0, 0.99);
            Weakness cause = weak.choice(
                    "cause", List.of(Weakness.SPARK, Weakness.FUEL, Weakness.COMPRESSION), VehicleFields::word);
            weak.close();
            cylinders = cylinders.with(number, new Cylinder(strength, cause));
        }
        fields.close();
        return UsualVehicle.of(count, transmission).with(cylinders);
    }

    private static Cylinders inOrder(Fields fields, Cylinders cylinders) {
        int before = fields.problems().count();
        int count = cylinders.count();
        List<Double> order = fields.numbers("firing_order", 1, count);
        List<Double> numbers = IntStream.rangeClosed(1, count)
                .mapToObj(number -> (double) number)
                .toList();
        if (order.stream().sorted().toList().equals(numbers)) {
            return new Cylinders(
                    cylinders.byNumber(), order.stream().map(Double::intValue).toList());
        }
        if (fields.problems().count() == before) {
            fields.problem("firing_order", "expected each cylinder from 1 to " + count + " once");
        }
        return cylinders;
    }

    static Conditions conditions(Fields fields, Transmission transmission) {
        Conditions usual = Conditions.warm();
        Battery charged = Battery.charged();
        Battery battery = new Battery(
                fields.number("battery_v", 0, 16, charged.volts()),
                charged.internalOhms(),
                fields.flag("battery_disconnected", false));
        Gear gear = fields.choice("gear", List.of(Gear.values()), VehicleFields::word, Gear.NEUTRAL);
        Conditions conditions = new Conditions(
                fields.number("coolant_c", -40, 130, usual.coolantCelsius()),
                fields.number("air_c", -40, 100, usual.airCelsius()),
                battery,
                gear,
                fields.flag("clutch_down", false),
                fields.flag("air_conditioning", false),
                fields.number("throttle", 0, 1, 0));
        if (!transmission.admits(conditions)) {
            fields.problem(
                    transmission == Transmission.MANUAL
                            ? "a manual gearbox has no park; expected gear \"neutral\" or \"engaged\""
                            : "an automatic gearbox has no clutch pedal to hold down");
        }
        fields.close();
        return conditions;
    }

    /** An enum constant as files write it. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

package telltally.trainer.lesson;

import java.util.List;
import java.util.stream.Stream;

/** The cautions of the trade, as they are shown beside every procedure. Common practice, no source. */
public final class Cautions {
    /** Who decides; said with every lesson. */
    public static final List<String> ALWAYS = List.of(
            "A trainer is no manual: the equipment's own service information, local rules and a licensed technician"
                    + " decide.");

    public static final List<String> ENGINE_OFF = joined(
            List.of(
                    "Use only the terminals that the vehicle's own manual names. A jumper end that touches battery positive or"
                            + " the body can burn, and can destroy the controller.",
                    "Never probe airbag or high-voltage wiring (yellow and orange). Wear eye protection at the battery.",
                    "Parking brake on, wheels chocked, neutral or park. Keep hands, hair, sleeves and leads clear of fans, belts"
                            + " and hot exhaust: an electric fan can start by itself, engine off or not."),
            ALWAYS);

    public static final List<String> ENGINE_RUNNING = joined(
            List.of(
                    "A running engine indoors kills by carbon monoxide: pipe the exhaust to the open air. Open doors alone are"
                            + " not enough."),
            ENGINE_OFF);

    private Cautions() {}

    private static List<String> joined(List<String> first, List<String> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }
}

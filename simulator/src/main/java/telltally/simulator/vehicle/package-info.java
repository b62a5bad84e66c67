/**
 * A vehicle as its controller meets it: sensors, switches and solenoids with the wires between, the battery, and an
 * engine that turns. Volts come out of the resistors that are there, speed out of the energy of each firing; nothing
 * is looked up by fault. What the controller makes of it (phases, codes, flashes) does not belong here.
 */
@NullMarked
package telltally.simulator.vehicle;

import org.jspecify.annotations.NullMarked;

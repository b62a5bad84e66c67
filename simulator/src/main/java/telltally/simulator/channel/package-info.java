/**
 * What stands between the controller's output and the observer: lamp, needle, sounder, wire, camera, tapping finger;
 * and what spoils a pulse train on the way. Pulse trains go in; out come trains as the observer counts them, or light,
 * deflection, sound and volts as samples, computed only when asked for. Each source of trouble draws from a stream of its
 * own. What the flashes mean does not belong here, nor do files.
 */
@NullMarked
package telltally.simulator.channel;

import org.jspecify.annotations.NullMarked;

/**
 * From what was recorded (samples, sound, a phone clip) to a pulse train, without a setting by hand: levels, noise and
 * polarity are found in the data. What comes out is pulses with figures for their quality, or the reason why there are
 * none. What the pulses mean does not belong here, nor does anything that knows the truth.
 */
@NullMarked
package telltally.decoder.capture;

import org.jspecify.annotations.NullMarked;

package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static telltally.simulator.channel.Trains.MILLI;
import static telltally.simulator.channel.Trains.SECOND;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

class FilamentLampTest {
    private static final Bulb STOP_LAMP = new Bulb(12.8, 12.8 * 2.1, 2800);

    @Nested
    class Steady {
        @ParameterizedTest
        @ValueSource(doubles = {2200, 2500, 2800})
        void power_and_current_re_rate_as_the_tables_and_the_handbook_say(double hotKelvin) {
            Bulb bulb = new Bulb(12, 3, hotKelvin);
            double power = exponent(
                    FilamentLamp.of(bulb, 11).steadyWatts(),
                    FilamentLamp.of(bulb, 13).steadyWatts());
            double current = exponent(
                    FilamentLamp.of(bulb, 11).steadyAmperes(),
                    FilamentLamp.of(bulb, 13).steadyAmperes());

            // A radiation-only model on these tables gives V^1.59, and how the slope is taken is worth 0.003; straight
            // lines between the table's points make it 0.01.
            assertThat(power).isCloseTo(1.59, within(0.01));
            // Fink and Beaty, Standard Handbook for Electrical Engineers, 11th ed. p. 22-8: 1.6 for power, 0.55 for
            // current. A rule of thumb (the two differ by more than 1), so 0.05 for the latter.
            assertThat(power).isCloseTo(1.6, within(0.02));
            assertThat(current).isCloseTo(0.55, within(0.05));
        }

        @Test
        void temperature_follows_the_tables() {
            Bulb bulb = Bulb.panel();

            // V^0.342 by the tables; the handbook's 0.42 is for colour temperature and is not met by them.
            assertThat(exponent(
                            FilamentLamp.of(bulb, 11).steadyKelvin(),
                            FilamentLamp.of(bulb, 13).steadyKelvin()))
                    .isCloseTo(0.342, within(0.005));
        }

        /** The handbook's light exponents of 3.4 to 3.5; a hundredth of the light for the approximation of the eye. */
        @ParameterizedTest
        @CsvSource({"10.8, 0.692, 0.699", "13.2, 1.383, 1.396"})
        void light_re_rates_as_the_handbook_says(double volts, double least, double most) {
            assertThat(FilamentLamp.of(Bulb.warning(), volts).steadyLight()).isBetween(least - 0.01, most + 0.01);
        }

        @Test
        void at_its_rated_voltage_a_bulb_does_what_is_stamped_on_it() {
            FilamentLamp lamp = FilamentLamp.of(Bulb.testLight(), 12);

            assertThat(lamp.steadyKelvin()).isCloseTo(2650, within(0.001));
            assertThat(lamp.steadyWatts()).isCloseTo(5, within(1e-5));
            assertThat(lamp.steadyLight()).isCloseTo(1, within(1e-5));
        }

        @Test
        void the_inrush_is_about_fourteen_times_the_steady_current() {
            FilamentLamp lamp = FilamentLamp.of(STOP_LAMP, 12.8);

            // lamptech.co.uk, notes on starting: about 14; the table's ratio is 14.99.
            assertThat(lamp.coldAmperes() / lamp.steadyAmperes()).isBetween(13.5, 15.0);
        }

        @Test
        void a_series_resistance_takes_its_share() {
            FilamentLamp lamp = new FilamentLamp(Bulb.warning(), 12, 10, FilamentLamp.USUAL_MARKS);
            double atFilament = 12 - 10 * lamp.steadyAmperes();

            assertThat(lamp.steadyKelvin())
                    .isCloseTo(FilamentLamp.of(Bulb.warning(), atFilament).steadyKelvin(), within(0.01));
        }

        @Test
        void a_filament_that_would_melt_is_refused() {
            assertThatThrownBy(() -> FilamentLamp.of(Bulb.warning(), 48))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("temperature");
        }

        private static double exponent(double at11, double at13) {
            return Math.log(at13 / at11) / Math.log(13.0 / 11);
        }
    }

    @Nested
    class Warming {
        private final PulseTrain step = PulseTrain.of(false, 6 * SECOND, SECOND, 4 * SECOND);

        /**
         * A separate computation on the same published tables, with another program and another integration: rated
         * volts, watts and kelvin, then milliseconds from off to 90 % and from full to 10 % of the light.
         */
        @ParameterizedTest
        @CsvSource({"12.8, 26.88, 2800, 205, 86", "12, 1.2, 2500, 45, 16", "12, 3, 2550, 74, 28", "12, 5, 2650, 88, 35"
        })
        void bulbs_warm_and_cool_as_computed_elsewhere(
                double volts, double watts, double kelvin, double upMillis, double downMillis) {
            FilamentLamp lamp = FilamentLamp.of(new Bulb(volts, watts, kelvin), volts);

            // The other figures are whole milliseconds; one more for the step and the way the table is read.
            assertThat(riseMillis(lamp, 0.9)).isCloseTo(upMillis, within(1.5));
            assertThat(fallMillis(lamp, 0.1)).isCloseTo(downMillis, within(1.5));
        }

        @Test
        void a_stop_lamp_takes_about_a_quarter_of_a_second() {
            // Sivak and others, UMTRI-93-37 (1993), abstract: about 0.25 s to 90 %. A real filament is a coil that
            // sees itself and is slower; the straight wire falls short by up to a fifth.
            assertThat(riseMillis(FilamentLamp.of(STOP_LAMP, 12.8), 0.9)).isBetween(200.0, 250.0);
        }

        @Test
        void small_indicator_lamps_take_30_to_100_ms_up_and_15_to_60_ms_down() {
            // From memory, for 12 V and 1 to 3 W.
            for (Bulb bulb : new Bulb[] {Bulb.panel(), Bulb.warning()}) {
                assertThat(riseMillis(FilamentLamp.of(bulb, 12), 0.9)).isBetween(30.0, 100.0);
                assertThat(fallMillis(FilamentLamp.of(bulb, 12), 0.1)).isBetween(15.0, 60.0);
            }
        }

        @Test
        void a_weak_battery_dims_and_slows_the_lamp() {
            FilamentLamp strong = FilamentLamp.of(Bulb.warning(), 12);
            FilamentLamp weak = FilamentLamp.of(Bulb.warning(), 9);

            assertThat(weak.steadyLight()).isLessThan(0.45);
            assertThat(riseMillis(weak, 0.9)).isGreaterThan(1.2 * riseMillis(strong, 0.9));
        }

        @Test
        void the_curves_give_what_small_steps_give() {
            PulseTrain train = PulseTrain.of(
                    false,
                    700 * MILLI,
                    20 * MILLI,
                    40 * MILLI,
                    55 * MILLI,
                    300 * MILLI,
                    310 * MILLI,
                    330 * MILLI,
                    500 * MILLI);
            FilamentLamp lamp = new FilamentLamp(Bulb.panel(), 11, 4, FilamentLamp.USUAL_MARKS);
            SampledSignal light = lamp.light(train, 1000);
            Filament filament = new Filament(Bulb.panel());
            HeatBalance on = new HeatBalance(filament, 11, 4);
            HeatBalance off = new HeatBalance(filament, 0, 0);
            double kelvin = 300;
            for (int sample = 0; sample < light.size(); sample++) {
                // Linear pieces: a thousandth of full light, as the curve's class comment promises.
                assertThat(light.value(sample))
                        .as("at %s ms", sample)
                        .isCloseTo(new FilamentLight(2500).level(kelvin), within(1e-3));
                for (int step = 0; step < 100; step++) {
                    HeatBalance now = train.litAt(sample * MILLI + step * 10_000L) ? on : off;
                    double middle = kelvin + 5e-6 * now.kelvinPerSecond(kelvin);
                    kelvin += 1e-5 * now.kelvinPerSecond(middle);
                }
            }
        }

        private double riseMillis(FilamentLamp lamp, double share) {
            SampledSignal light = lamp.light(step, 10_000);
            int sample = 10_000;
            while (light.value(sample) < share * lamp.steadyLight()) {
                sample++;
            }
            return (light.atNanos(sample) - SECOND) / 1e6;
        }

        private double fallMillis(FilamentLamp lamp, double share) {
            SampledSignal light = lamp.light(step, 10_000);
            int sample = 40_000;
            while (light.value(sample) > share * lamp.steadyLight()) {
                sample++;
            }
            return (light.atNanos(sample) - 4 * SECOND) / 1e6;
        }
    }

    @Nested
    class Seen {
        @Test
        void every_flash_of_half_a_second_is_seen_a_little_late() {
            PulseTrain sent = Trains.flashes(20);
            PulseTrain seen = FilamentLamp.of(Bulb.warning(), 12.6).visible(sent);

            assertThat(seen.edgeCount()).isEqualTo(sent.edgeCount());
            for (int i = 0; i < sent.edgeCount(); i++) {
                assertThat(seen.edgeNanos(i) - sent.edgeNanos(i)).isBetween(5 * MILLI, 60 * MILLI);
            }
        }

        @Test
        void edges_stand_where_the_light_crosses_the_marks() {
            FilamentLamp lamp = FilamentLamp.of(Bulb.panel(), 11);
            PulseTrain sent = Trains.flashes(3);
            Hysteresis marks = new Hysteresis(0.1 * lamp.steadyLight(), 0.5 * lamp.steadyLight());
            PulseTrain sampled = marks.edges(lamp.light(sent, 20_000), sent.endNanos());
            PulseTrain seen = lamp.visible(sent);

            assertThat(seen.edgeCount()).isEqualTo(sampled.edgeCount());
            for (int i = 0; i < seen.edgeCount(); i++) {
                // Samples are 50 microseconds apart, with straight lines between.
                assertThat(seen.edgeNanos(i)).isCloseTo(sampled.edgeNanos(i), within(2_000L));
            }
        }

        @ParameterizedTest
        @ValueSource(strings = {"panel", "warning", "testLight"})
        void a_burst_a_hundred_times_faster_shows_as_a_flicker_and_counts_nothing(String name) {
            Bulb bulb =
                    name.equals("panel") ? Bulb.panel() : name.equals("warning") ? Bulb.warning() : Bulb.testLight();
            FilamentLamp lamp = FilamentLamp.of(bulb, 12.6);
            SampledSignal light = lamp.light(burst(), 5000);
            double brightest = 0;
            for (int i = 0; i < light.size(); i++) {
                brightest = Math.max(brightest, light.value(i) / lamp.steadyLight());
            }

            assertThat(lamp.visible(burst()).edgeCount()).isZero();
            assertThat(brightest).isBetween(0.02, 0.45);
        }

        @Test
        void a_lamp_lit_at_the_start_is_seen_at_once() {
            PulseTrain bulbCheck = PulseTrain.of(true, 4 * SECOND, 2 * SECOND);
            Interval first = FilamentLamp.of(Bulb.panel(), 12)
                    .visible(bulbCheck)
                    .intervals()
                    .get(0);

            assertThat(first.lit()).isTrue();
            assertThat(first.endNanos()).isBetween(2 * SECOND, 2 * SECOND + 30 * MILLI);
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, 0.5, 2})
        void a_nearly_flat_battery_shows_nothing(double volts) {
            FilamentLamp lamp = FilamentLamp.of(Bulb.panel(), volts);

            assertThat(lamp.visible(PulseTrain.of(true, 9 * SECOND, SECOND, 2 * SECOND)))
                    .isEqualTo(PulseTrain.of(false, 9 * SECOND));
            assertThat(lamp.light(Trains.flashes(1), 100).value(650)).isLessThan(0.01);
        }

        /** The codes 99, 89, 34, twice: 5 ms lit, 5 ms dark, 20 ms between digits, 40 ms between codes. */
        private static PulseTrain burst() {
            PulseTrain.Builder burst = PulseTrain.builder().dark(6 * SECOND);
            for (int digit : new int[] {9, 9, 0, 8, 9, 0, 3, 4, 0, 9, 9, 0, 8, 9, 0, 3, 4}) {
                for (int flash = 0; flash < digit; flash++) {
                    burst.lit(5 * MILLI).dark(5 * MILLI);
                }
                burst.dark(digit == 0 ? 20 * MILLI : 15 * MILLI);
            }
            return burst.dark(6 * SECOND).build();
        }
    }

    @Nested
    class Diode {
        @Test
        void an_led_shows_every_edge_at_once() {
            Led led = Led.at(12);

            assertThat(led.visible(Trains.flashes(5))).isEqualTo(Trains.flashes(5));
            assertThat(led.light(Trains.flashes(5), 100).value(600)).isEqualTo(1);
            assertThat(led.light(Trains.flashes(5), 100).value(599)).isZero();
        }

        @Test
        void an_led_below_its_threshold_stays_dark() {
            assertThat(Led.at(1.5).visible(Trains.flashes(5)).edgeCount()).isZero();
            assertThat(Led.at(6.9).steadyLight()).isCloseTo(0.5, within(1e-12));
        }
    }
}

package telltally.trainer.screen;

import telltally.simulator.scenario.Display;
import telltally.trainer.text.Texts;

/** What the ways to perceive flashes are called. */
record DisplayNames(Texts texts) {
    String of(Display display) {
        return texts.of(
                switch (display) {
                    case LAMP -> "display.lamp";
                    case LED -> "display.led";
                    case SOUNDER -> "display.sounder";
                    case LAMP_AND_SOUNDER -> "display.lamp-and-sounder";
                    case TEST_LIGHT -> "display.test-light";
                    case METER -> "display.meter";
                });
    }
}

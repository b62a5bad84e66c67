package telltally.decoder.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.signal.PulseTrain;

class TimelineSvgTest {
    private final List<FlashFormat> formats = FormatCatalog.shipped().all();

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> texts(Document svg) {
        NodeList found = svg.getElementsByTagName("text");
        return java.util.stream.IntStream.range(0, found.getLength())
                .mapToObj(i -> found.item(i).getTextContent())
                .toList();
    }

    @Test
    void every_flash_has_a_bar_and_every_group_its_digits() throws Exception {
        FlashFormat format = FormatCatalog.shipped().find("pair-even").orElseThrow();
        PulseTrain lamp = new Encoder(format)
                .encode(new Message.KeyOn(List.of("34"), List.of("21")), Pacing.usual())
                .lamp();
        Reading reading = new PlainDecoder().decode(lamp, formats);
        Document svg = parsed(TimelineSvg.text(lamp, reading, "yard <1> & more.csv"));

        NodeList titles = svg.getElementsByTagName("title");
        assertThat(titles.getLength()).isGreaterThanOrEqualTo(7 + 7 + 1 + 3 + 3);
        assertThat(((Element) titles.item(0).getParentNode()).getTagName()).isEqualTo("rect");
        assertThat(texts(svg)).contains("yard <1> & more.csv");
        assertThat(texts(svg)).anyMatch(text -> text.startsWith("code 34 "));
        assertThat(texts(svg)).anyMatch(text -> text.startsWith("separator 1 "));
        assertThat(texts(svg)).anyMatch(text -> text.startsWith("code 21 "));
        assertThat(texts(svg)).contains("7");
    }

    @Test
    void a_missed_flash_is_marked_with_its_warning() throws Exception {
        FlashFormat format = FormatCatalog.shipped().find("pair-even").orElseThrow();
        PulseTrain.Builder builder = PulseTrain.builder();
        PulseTrain whole = new Encoder(format)
                .encode(new Message.KeyOn(List.of("34"), List.of("21")), Pacing.usual())
                .lamp();
        for (int i = 0; i < whole.intervals().size(); i++) {
            var each = whole.intervals().get(i);
            builder.stay(each.lit() && i != 3, each.lengthNanos());
        }
        PulseTrain spoiled = builder.build();
        Reading reading = new PlainDecoder().decode(spoiled, List.of(format));
        assertThat(reading.warnings()).isNotEmpty();
        assertThat(texts(parsed(TimelineSvg.text(spoiled, reading, "x"))))
                .anyMatch(text -> text.startsWith("! ") && text.contains("flash"));
    }

    @Property(tries = 100)
    void any_train_gives_well_formed_xml(
            @ForAll @Size(min = 1, max = 30) List<@LongRange(min = 1, max = 30_000_000_000L) Long> lengths,
            @ForAll String source)
            throws Exception {
        PulseTrain.Builder builder = PulseTrain.builder();
        boolean lit = false;
        for (long length : lengths) {
            builder.stay(lit, length);
            lit = !lit;
        }
        PulseTrain train = builder.build();
        Reading reading = new PlainDecoder().decode(train, formats);
        String clean = source.chars()
                .filter(letter -> !Character.isSurrogate((char) letter))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        assertThat(parsed(TimelineSvg.text(train, reading, clean))
                        .getDocumentElement()
                        .getTagName())
                .isEqualTo("svg");
    }
}

package telltally.decoder.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What stands where in a drawing, read from its SVG: places in its own units, downwards from the upper left corner. */
public record Drawing(Document document) {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");

    public static Drawing of(String svg) throws Exception {
        return new Drawing(DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg))));
    }

    public Mark whole() {
        return new Mark(document.getDocumentElement());
    }

    /** Every element of a name, such as {@code rect}, in the order drawn. */
    public List<Mark> marks(String name) {
        NodeList found = document.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> new Mark((Element) found.item(i)))
                .toList();
    }

    /** The marks of a class of style. */
    public List<Mark> marks(String name, String kind) {
        return marks(name).stream()
                .filter(mark -> mark.said("class").equals(kind))
                .toList();
    }

    public List<String> texts() {
        return marks("text").stream().map(Mark::words).toList();
    }

    /** The only text that reads so. */
    public Mark text(String words) {
        List<Mark> found = marks("text").stream()
                .filter(mark -> mark.words().equals(words))
                .toList();
        assertThat(found).as("'%s' among %s", words, texts()).hasSize(1);
        return found.get(0);
    }

    /** One element. */
    public record Mark(Element element) {
        public String said(String attribute) {
            return element.getAttribute(attribute);
        }

        public double at(String attribute) {
            return Double.parseDouble(said(attribute));
        }

        /** The numbers of an attribute that holds several, such as those of a path. */
        public List<Double> numbers(String attribute) {
            return NUMBER.matcher(said(attribute))
                    .results()
                    .map(MatchResult::group)
                    .map(Double::valueOf)
                    .toList();
        }

        public double right() {
            return at("x") + at("width");
        }

        public double foot() {
            return at("y") + at("height");
        }

        public String words() {
            return element.getTextContent();
        }
    }
}

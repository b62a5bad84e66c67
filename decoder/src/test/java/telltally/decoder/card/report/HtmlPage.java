package telltally.decoder.card.report;

import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What a page says, read from its HTML: headings, tables by their captions, words of other elements. */
record HtmlPage(Element root) {
    static HtmlPage of(String html) throws Exception {
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(html)));
        return new HtmlPage(document.getDocumentElement());
    }

    /** Of something that stands in a page. */
    static HtmlPage of(HtmlText piece) throws Exception {
        return of("<main>" + piece + "</main>");
    }

    List<Element> elements(String name) {
        return elements(root, name);
    }

    private static List<Element> elements(Element parent, String name) {
        NodeList found = parent.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    List<String> words(String name) {
        return words(elements(name));
    }

    private static List<String> words(List<Element> elements) {
        return elements.stream().map(Element::getTextContent).toList();
    }

    private Element table(String caption) {
        return elements("table").stream()
                .filter(each ->
                        elements(each, "caption").get(0).getTextContent().startsWith(caption))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no table '" + caption + "' among " + words("caption")));
    }

    /** The heads of a table whose caption begins so. */
    List<String> heads(String caption) {
        return words(elements(elements(table(caption), "thead").get(0), "th"));
    }

    /** The rows below them, cell by cell. */
    List<List<String>> rows(String caption) {
        return elements(elements(table(caption), "tbody").get(0), "tr").stream()
                .map(HtmlPage::cells)
                .toList();
    }

    private static List<String> cells(Element row) {
        NodeList children = row.getChildNodes();
        return IntStream.range(0, children.getLength())
                .mapToObj(i -> children.item(i).getTextContent())
                .toList();
    }
}

package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class HtmlTextTest {
    @Test
    void what_is_not_markup_is_escaped() {
        assertThat(new HtmlText()
                        .markup("<i>")
                        .words("a < b > c & \"d\" e")
                        .markup("</i>")
                        .toString())
                .isEqualTo("<i>a &lt; b &gt; c &amp; &quot;d&quot; e</i>");
    }

    @Test
    void control_characters_become_blanks_and_line_ends_stay() {
        assertThat(HtmlText.escaped("a\u0007b\tc\nd ~")).isEqualTo("a b c\nd ~");
    }

    @Test
    void words_stand_to_the_left_and_figures_to_the_right_in_heads_and_rows() throws Exception {
        HtmlText table = new HtmlText()
                .tableHead("what & why", 2, List.of("set", "line", "n", "share"))
                .row(2, List.of("calm", "lamp", "7", "9.5"))
                .tableEnd();
        HtmlPage page = HtmlPage.of(table);
        assertThat(page.heads("what & why")).containsExactly("set", "line", "n", "share");
        assertThat(page.rows("what & why")).containsExactly(List.of("calm", "lamp", "7", "9.5"));
        assertThat(page.elements("th").stream().map(head -> head.getAttribute("scope")))
                .containsExactly("col", "col", "col", "col", "row");
        assertThat(page.elements("th").stream().filter(HtmlTextTest::figure).map(Element::getTextContent))
                .containsExactly("n", "share");
        assertThat(page.elements("td").stream().filter(HtmlTextTest::figure).map(Element::getTextContent))
                .containsExactly("7", "9.5");
    }

    private static boolean figure(Element cell) {
        return cell.getAttribute("class").equals("figure");
    }
}

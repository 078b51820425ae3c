package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Cell;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.notice.Outcome;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BlockReaderTest {
    private static final Drawing FOOT = (width, height, label) -> new Figure(width, height, List.of());

    @Test
    void running_text_keeps_weight_signs_and_single_spaces() {
        assertEquals(List.of(new Block.Paragraph(Block.Paragraph.Role.LEAD, List.of(Inline.plain("Your "), Inline.bold("left side"), Inline.plain(" learns,"),
                new Inline.Sign(Inline.Sign.Kind.UP_TRIANGLE), Inline.plain(" up. See "), new Inline.PageOf("Weeks"), Inline.plain(".")))),
                read("<paragraph role='lead'>\n  Your <b>left\n side</b>  learns,<sign kind='up-triangle'/> up.\n See <page-of part='Weeks'/>.\n</paragraph>"));
    }

    @Test
    void a_no_break_space_stays() {
        assertEquals(List.of(new Block.Measures(List.of(new Block.Measures.Measure("15\u00a0cm", "box")))),
                read("<measures><measure value='15\u00a0cm'> box </measure></measures>"));
    }

    @Test
    void a_table_keeps_its_columns_heads_groups_and_cells() {
        var table = (Block.Table) read("""
                <table title="Monday">
                  <column width="51" align="left"/><column width="14.5" align="centre" toned="yes"/>
                  <head><row><blank/><words>1</words></row></head>
                  <group><row height="11.2"><side badge="left"/><dose upper="3 × 8" lower="8" heavier="yes" third="2 spare"/></row>
                         <row><dash/><entry kind="check" field="w1/mon/done" tip="done"/></row></group>
                  <note>x</note>
                </table>""").getFirst();
        assertEquals(List.of(new Block.Table.Column(51, Block.Table.Align.LEFT, false), new Block.Table.Column(14.5, Block.Table.Align.CENTRE, true)),
                table.columns());
        assertEquals(new Cell.Words(List.of(List.of(Inline.plain("1")))), table.head().getFirst().cells().get(1));
        var rows = table.groups().getFirst().rows();
        assertEquals(new Block.Table.Row(List.of(new Cell.Side(Badge.LEFT), new Cell.Dose("3 × 8", "8", Optional.of("2 spare"), true)), 11.2), rows.getFirst());
        assertEquals(List.of(new Cell.Dash(), new Cell.Entry(new Field("w1/mon/done", "done", Field.Kind.CHECK))), rows.get(1).cells());
    }

    @Test
    void a_one_sided_card_says_why_its_other_column_is_empty() {
        var card = (Block.Card) read("""
                <card key="press" number="3" name="Press"><aside>Rest</aside>
                  <single side="right"><half heading="Right arm" order="right only"><paragraph>a</paragraph></half>
                  <empty heading="No left side"><paragraph>b</paragraph></empty></single>
                </card>""").getFirst();
        assertEquals(new Block.Halves.Single(Badge.RIGHT, new Block.Half("Right arm", "right only", List.of(paragraph("a"))), "No left side",
                List.of(paragraph("b"))), card.halves());
    }

    @Test
    void every_kind_of_block_can_be_written() {
        var blocks = read("""
                <title>a<aside>b</aside></title><masthead lead="a" title="b">c</masthead><heading level="2">a</heading><paragraph>a</paragraph>
                <bullets><item>a</item></bullets><steps><item>a</item></steps><measures><measure value="1">a</measure></measures>
                <reasons><statement source="house">a</statement></reasons><plate drawing="foot" alt="a" width="1" height="2">c</plate>
                <figure-row><figure drawing="foot" alt="a" share="1"/></figure-row>
                <opening lead="a" name="b" week="c"><imprint>d</imprint><sentence>e</sentence><panel heading="f"><group heading="g"><item>h</item></group></panel>
                  <day name="Monday" short="Mon" training="yes"><line>i</line></day><note droppable="1">j</note></opening>
                <panel heading="a"><group heading=""><item>b</item><after>c</after></group></panel>
                <card key="a" number="1" name="b"><aside/><both><half heading="c" order="d"><paragraph>e</paragraph></half></both></card>
                <table title=""><column width="1" align="left"/><group><row><blank/></row></group></table>
                <field-line heading="a"><box label="b" kind="text" width="26" field="c" tip="d" after="e"/></field-line>
                <field-row height="9"><box label="a" kind="multiline" share="1" field="b" tip="c"/></field-row>
                <choice field="a" tip="b" detail="c" detail-tip="d">e</choice>
                <columns split="even"><left><paragraph>a</paragraph></left><right><paragraph>b</paragraph></right></columns>
                <rule weight="cut">a</rule><together><paragraph>a</paragraph></together><page-break/>""");
        var written = blocks.stream().map(Object::getClass).collect(Collectors.toList());
        assertEquals(Stream.of(Block.class.getPermittedSubclasses()).map(Class::getSimpleName).sorted().toList(),
                written.stream().map(Class::getSimpleName).sorted().toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <para>a</para>                                          | 1 | `<para>` cannot stand in `<part>`
            <paragraph rule='lead'>a</paragraph>                    | 1 | `<paragraph>` has no `rule`
            <paragraph role='big'>a</paragraph>                     | 1 | `role="big"` is not known
            <plate drawing='foot' alt='a' width='wide' height='1'/> | 1 | `width="wide"` is not a number
            <plate drawing='hand' alt='a' width='1' height='1'/>    | 1 | there is no drawing `hand`
            <choice field='a'>b</choice>                            | 1 | `<choice>` lacks `tip`
            loose words                                             | 1 | text stands directly in `<part>`
            <card key='a' number='1' name='b'/>                     | 1 | the card has no halves
            """)
    void a_slip_is_a_notice(String xml, int count, String message) {
        var slips = new Slips();
        new BlockReader(Map.of("foot", FOOT), slips).blocks(parsed("<part>" + xml + "</part>"));
        assertEquals(count, slips.found().size(), slips.found().toString());
        assertEquals(message, slips.found().getFirst().message());
    }

    @Test
    void a_row_with_too_few_cells_and_a_period_in_a_field_name_are_slips() {
        var slips = new Slips();
        new BlockReader(Map.of(), slips).blocks(parsed("<part><table title=''><column width='1' align='left'/><column width='1' align='left'/>"
                + "<group><row><entry kind='text' field='w1.mon' tip='a'/></row></group></table></part>"));
        assertEquals(List.of("the field name `w1.mon` holds a period", "the row has 1 cells, but the table 2 columns"),
                slips.found().stream().map(n -> n.message()).toList());
    }

    private static Block.Paragraph paragraph(String text) {
        return new Block.Paragraph(Block.Paragraph.Role.BODY, List.of(Inline.plain(text)));
    }

    private static List<Block> read(String xml) {
        var slips = new Slips();
        var blocks = new BlockReader(Map.of("foot", FOOT), slips).blocks(parsed("<part>" + xml + "</part>"));
        assertEquals(List.of(), slips.found());
        return blocks;
    }

    private static Piece.Element parsed(String xml) {
        return ((Outcome.Done<Piece.Element>) MarkupParser.parse(xml, "probe.ftlx")).value();
    }
}

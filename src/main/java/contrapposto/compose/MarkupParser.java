package contrapposto.compose;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The XML that templates write → a tree whose elements know their template line. Each element carries it in the
 * attribute that {@link MarkingLoader} has put there.
 */
final class MarkupParser {
    private static final XMLInputFactory FACTORY = factory();

    private final XMLStreamReader reader;
    private final Deque<Open> open = new ArrayDeque<>();
    private Span last;

    private record Open(String name, Map<String, String> attributes, List<Piece> pieces, Span span) { }

    private MarkupParser(XMLStreamReader reader, String template) {
        this.reader = reader;
        this.last = Span.whole(template);
    }

    /** The root element; refused when the XML is not well formed. {@code template} names the outermost template. */
    static Outcome<Piece.Element> parse(String xml, String template) {
        try {
            var reader = FACTORY.createXMLStreamReader(new StringReader(xml));
            return new MarkupParser(reader, template).run();
        } catch (XMLStreamException e) {
            return refused(Span.whole(template), e);
        }
    }

    private Outcome<Piece.Element> run() {
        try {
            while (reader.hasNext()) {
                switch (reader.next()) {
                    case XMLStreamConstants.START_ELEMENT -> start();
                    case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> open.peek().pieces().add(new Piece.Text(reader.getText()));
                    case XMLStreamConstants.END_ELEMENT -> {
                        var closed = open.pop();
                        var element = new Piece.Element(closed.name(), closed.attributes(), closed.pieces(), closed.span());
                        if (open.isEmpty()) {
                            return Outcome.done(element);
                        }
                        open.peek().pieces().add(element);
                    }
                    default -> { }
                }
            }
        } catch (XMLStreamException e) {
            return refused(last, e);
        }
        return new Outcome.Refused<>(List.of(Notice.error("template-slip", last, "the template wrote no element", "begin with `<handout>`")));
    }

    private void start() {
        var attributes = new LinkedHashMap<String, String>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
        }
        String mark = attributes.getOrDefault(MarkingLoader.MARK, "");
        attributes.remove(MarkingLoader.MARK);
        last = mark.isEmpty() ? last : MarkingLoader.span(mark);
        open.push(new Open(reader.getLocalName(), attributes, new ArrayList<>(), last));
    }

    private static Outcome<Piece.Element> refused(Span near, XMLStreamException e) {
        String what = e.getMessage().lines().filter(l -> l.startsWith("Message: ")).findFirst()
                .map(l -> l.substring("Message: ".length())).orElse("it is not well formed");
        return new Outcome.Refused<>(List.of(Notice.error("template-slip", near,
                "after this element the template writes XML that cannot be read: " + what.replaceAll("\\.$", ""),
                "close every element that is opened, in order")));
    }

    private static XMLInputFactory factory() {
        var made = XMLInputFactory.newDefaultFactory();
        made.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        made.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        made.setProperty(XMLInputFactory.IS_COALESCING, true);
        return made;
    }
}

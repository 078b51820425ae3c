package contrapposto.compose;

import contrapposto.document.Document;
import contrapposto.document.Inline;
import contrapposto.figure.Drawing;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words of a document in reading order, one line a block or cell; drawings are left out. */
public final class DocumentText {
    private DocumentText() { }

    public static List<String> of(Object value) {
        var lines = new ArrayList<String>();
        add(value, lines);
        return lines;
    }

    public static String of(Document document, String part) {
        return String.join("\n", of(document.parts().stream().filter(p -> p.name().equals(part)).findFirst().orElseThrow().blocks()));
    }

    private static void add(Object value, List<String> lines) {
        switch (value) {
            case List<?> list when !list.isEmpty() && list.getFirst() instanceof Inline -> lines.add(inline(list));
            case List<?> list -> list.forEach(item -> add(item, lines));
            case Optional<?> perhaps -> perhaps.ifPresent(item -> add(item, lines));
            case String text when !text.isBlank() -> lines.add(text);
            case Drawing drawing -> { }
            case Record record -> {
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    try {
                        component.getAccessor().setAccessible(true);
                        add(component.getAccessor().invoke(record), lines);
                    } catch (ReflectiveOperationException e) {
                        throw new IllegalStateException(e);
                    }
                }
            }
            default -> { }
        }
    }

    private static String inline(List<?> runs) {
        var line = new StringBuilder();
        for (Object run : runs) {
            switch ((Inline) run) {
                case Inline.Text(var text, var bold) -> line.append(text);
                case Inline.Sign(var kind) -> line.append('[').append(kind).append(']');
                case Inline.PageOf(var part) -> line.append("[page of ").append(part).append(']');
            }
        }
        return line.toString();
    }
}

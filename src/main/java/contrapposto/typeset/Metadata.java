package contrapposto.typeset;

import contrapposto.document.Document;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfFileSpecification;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/**
 * What a PDF says of itself: title, dates, identifier, standards (PDF/UA-1 with PDF/A-2a, or 3a with an attachment),
 * colour space. Nothing here depends on the machine or the hour.
 */
final class Metadata {
    private static final String MAKER = "Contrapposto";
    private static final String COLOURS = "sRGB IEC61966-2.1";
    private static final int PLATFORM = 40;
    private static final int IDENTIFIER_BYTES = 16;
    private static final byte[] PROFILE = profile();

    private final Document document;
    private final boolean archival;
    private final String day;

    /** @param archival whether the file claims to be PDF/A */
    Metadata(Document document, boolean archival) {
        this.document = document;
        this.archival = archival;
        day = document.made().toString();
    }

    /** The colour profile of the run-time, without the name of the platform in its head. */
    private static byte[] profile() {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        Arrays.fill(profile, PLATFORM, PLATFORM + 4, (byte) 0);
        return profile;
    }

    void write(PdfWriter writer) throws IOException {
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(document.language()));
        info(writer.getInfo());
        writer.setXmpMetadata(xmp().getBytes(StandardCharsets.UTF_8));
        colours(writer);
        if (document.attachment().isPresent()) {
            attach(writer, document.attachment().get());
        }
    }

    private void info(PdfDictionary info) {
        String stamp = "D:" + day.replace("-", "") + "000000Z";
        info.put(PdfName.TITLE, Tags.text(document.title()));
        info.put(PdfName.AUTHOR, Tags.text(document.author()));
        info.put(PdfName.SUBJECT, Tags.text(document.subject()));
        info.put(PdfName.CREATOR, new PdfString(MAKER));
        info.put(PdfName.PRODUCER, new PdfString(MAKER));
        info.put(PdfName.CREATIONDATE, new PdfString(stamp));
        info.put(PdfName.MODDATE, new PdfString(stamp));
        byte[] identity = Arrays.copyOf(document.identity().getBytes(StandardCharsets.UTF_8), IDENTIFIER_BYTES);
        var identifier = new PdfString(identity);
        identifier.setHexWriting(true);
        var pair = new PdfArray(identifier);
        pair.add(identifier);
        info.put(PdfName.FILEID, pair);
    }

    private void colours(PdfWriter writer) throws IOException {
        var profile = new PdfStream(PROFILE);
        profile.put(PdfName.N, new PdfNumber(3));
        profile.put(PdfName.ALTERNATE, PdfName.DEVICERGB);
        profile.flateCompress();
        var intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString(COLOURS));
        intent.put(PdfName.INFO, new PdfString(COLOURS));
        intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
        writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
    }

    private void attach(PdfWriter writer, Document.Attachment file) throws IOException {
        var dates = new PdfDictionary();
        dates.put(PdfName.MODDATE, new PdfString("D:" + day.replace("-", "") + "000000Z"));
        var embedded = PdfFileSpecification.fileEmbedded(writer, null, file.fileName(), file.bytes(), file.mimeType(),
                dates, Printer.EFFORT);
        embedded.put(new PdfName("AFRelationship"), new PdfName("Source"));
        embedded.put(PdfName.DESC, Tags.text(file.description()));
        embedded.put(PdfName.UF, Tags.text(file.fileName()));
        writer.addFileAttachment(file.fileName(), embedded);
        writer.getExtraCatalog().put(new PdfName("AF"), new PdfArray(embedded.getReference()));
    }

    private String xmp() {
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                 xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                 xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                <dc:format>application/pdf</dc:format>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">@title</rdf:li></rdf:Alt></dc:title>
                <dc:creator><rdf:Seq><rdf:li>@author</rdf:li></rdf:Seq></dc:creator>
                <dc:description><rdf:Alt><rdf:li xml:lang="x-default">@subject</rdf:li></rdf:Alt></dc:description>
                <dc:language><rdf:Bag><rdf:li>@language</rdf:li></rdf:Bag></dc:language>
                <xmp:CreateDate>@dayT00:00:00Z</xmp:CreateDate><xmp:ModifyDate>@dayT00:00:00Z</xmp:ModifyDate>
                <xmp:CreatorTool>@maker</xmp:CreatorTool><pdf:Producer>@maker</pdf:Producer>
                @archive
                <pdfuaid:part>1</pdfuaid:part>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                 xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                 xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#"><pdfaExtension:schemas><rdf:Bag>
                <rdf:li rdf:parseType="Resource">
                <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                <pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                <pdfaProperty:category>internal</pdfaProperty:category>
                <pdfaProperty:description>part of ISO 14289 that is followed</pdfaProperty:description>
                </rdf:li></rdf:Seq></pdfaSchema:property></rdf:li>
                </rdf:Bag></pdfaExtension:schemas></rdf:Description>
                </rdf:RDF></x:xmpmeta>
                <?xpacket end="w"?>"""
                .replace("@archive", archival ? "<pdfaid:part>" + (document.attachment().isPresent() ? "3" : "2")
                        + "</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>" : "").replace("@maker", MAKER)
                .replace("@day", day).replace("@language", escaped(document.language()))
                .replace("@subject", escaped(document.subject())).replace("@author", escaped(document.author()))
                .replace("@title", escaped(document.title()));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
